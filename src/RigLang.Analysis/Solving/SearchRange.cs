using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Solving;

/// <summary>Where the value of an unknown is looked for, and which value would be usual.</summary>
/// <param name="Low">SI.</param>
/// <param name="High">SI.</param>
/// <param name="Usual">SI; of several answers the one nearest to this is taken.</param>
internal readonly record struct SearchRange(double Low, double High, double Usual)
{
    private const double MostOfExample = 5;
    private const double LeastOfExample = 0.01;

    /// <summary>
    /// The range that the question names; else what is plausible for the fact; else from nothing to several times the fact's example. Usual is what would stand in
    /// for the fact, else the example, else the middle.
    /// </summary>
    public static SearchRange Of(Unknown unknown, Study study)
    {
        var (low, high) = unknown.Within is { } within ? (within.Low.Value, within.High.Value) : Ordinary(unknown.Fact);
        var usual = StandIn(unknown, study) is { } stand && double.IsFinite(stand) ? stand : Example(unknown.Fact) ?? (low + high) / 2;
        return new SearchRange(low, high, Math.Clamp(usual, low, high));
    }

    private static (double Low, double High) Ordinary(FactRef fact)
    {
        var kind = fact.Kind!;
        if (fact.Role == Signature.ValueRole && fact.Fact.Plausible is { } plausible && fact.Fact.Kind is not null)
        {
            return plausible;
        }

        if (kind == QuantityKinds.Ratio)
        {
            return (0, 1);
        }

        var example = Math.Abs(Example(fact) ?? kind.Metric.ToSi(1));
        return kind.IsSlope ? (-3 * example, 3 * example)
            : kind == QuantityKinds.Angle ? (0, 2 * Math.PI)
            : (kind.IsCount || fact.Fact.MustBePositive ? example * LeastOfExample : 0, MostOfExample * example);
    }

    private static double? Example(FactRef fact) => FactExamples.Of(fact.Fact)?.MeasureOf(fact.Role) is { } measure && measure.Kind == fact.Kind ? measure.Value : null;

    private static double? StandIn(Unknown unknown, Study study)
    {
        if (unknown.Fact.Role != Signature.ValueRole || unknown.Line.Declaration.Repeats)
        {
            return null;
        }

        if (unknown.Line.Declaration == LegFacts.Journey.Speed && study is TripStudy trip)
        {
            return trip.Rig.Rig.Find(RigFacts.Speed)?.MeasureOf(Signature.ValueRole)?.Value;
        }

        return study.Probe(reader => reader.QuantityIfKnown(unknown.Block, unknown.Line.Declaration));
    }
}

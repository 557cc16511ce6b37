using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Curing;

/// <summary>What is set or chosen on a rig: spring bars, the ball's height, pressures.</summary>
internal static class SettingLevers
{
    /// <summary>Bars may be set tighter up to this many times what is written; who needs more wants other bars.</summary>
    private const double Tightest = 3;

    public static IEnumerable<Handle> Bars(Study study, Finding finding) =>
        study is not RigStudy rig ? [] : new[] { RigFacts.Restoration, RigFacts.Couple, RigFacts.BarForce }
            .SelectMany(fact => OfLine(rig.Rig, fact, value => fact == RigFacts.Restoration ? (0, 1) : (0, Tightest * value), text => $"Set `{fact.Keyword}` to {text}"));

    public static IEnumerable<Handle> Ball(Study study, Finding finding) =>
        study is not RigStudy { HasHitch: true } rig ? []
            : OfLine(rig.Hitch, HitchFacts.Drop, _ => HitchFacts.Drop.Plausible!.Value, text => $"Choose a ball mount with a drop of {text}")
                .Concat(OfLine(rig.Hitch, HitchFacts.Rise, _ => HitchFacts.Rise.Plausible!.Value, text => $"Choose a ball mount with a rise of {text}"));

    /// <summary>Up to the pressure at which the load index holds. Where nobody wrote that, no check fires that pressure alone can't cure below it.</summary>
    public static IEnumerable<Handle> Pressure(Study study, Finding finding) =>
        study is not RigStudy rig ? []
            : rig.Axles.Where(axle => axle.Title == finding.About).SelectMany(axle => OfLine(
                axle.Axle, axle.Facts.Pressure,
                value => (value, axle.Axle.Find(axle.Facts.RatedPressure)?.MeasureOf(Signature.ValueRole)?.Value ?? axle.Facts.Pressure.Plausible!.Value.High),
                text => $"Inflate to {text}"));

    /// <summary>The number of a line that a block has.</summary>
    /// <param name="ends">Least and most for what is written, SI.</param>
    internal static IEnumerable<Handle> OfLine(Block block, FactDeclaration fact, Func<double, (double Low, double High)> ends, Func<string, string> words)
    {
        if (block.Find(fact) is { } line && line.MeasureOf(Signature.ValueRole) is { } measure)
        {
            var (low, high) = ends(measure.Value);
            yield return new Handle(
                FactRef.Of(block, fact), measure.Value, low, high, measure.Unit, measure.Decimals,
                value => new Change(words(measure.With(value).Text), line.PlaceOf(Signature.ValueRole), measure.With(value).Text));
        }
    }
}

using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Analysis.Tracking;

/// <summary>Lines as they would be with another value in a slot.</summary>
internal static class ReplacedLines
{
    /// <param name="line">The line.</param>
    /// <param name="fact">Which slot of it.</param>
    /// <param name="value">SI; of a place, metres rearward of its point.</param>
    public static Fact With(Fact line, FactRef fact, double value) => line.Values.GetValueOrDefault(fact.Role) switch
    {
        MeasureValue slot => Put(line, fact.Role, slot with { Measure = slot.Measure.With(value, slot.Measure.HalfWidth) }),
        PositionValue place => Put(line, fact.Role, place with { Offset = value, Written = place.Written?.With(Math.Abs(value), place.Written.HalfWidth) }),
        { Span: var span } when fact.Kind is { } kind => Put(line, fact.Role, new MeasureValue(span, Made(kind, value))),
        _ => line,
    };

    private static Measure Made(QuantityKind kind, double value) => Measure.Of(kind, kind.Metric.FromSi(value), kind.Metric, kind.MetricDecimals);

    private static Fact Put(Fact line, string role, SlotValue value) => new(line.Declaration, line.Place, line.Values.SetItem(role, value), line.Key);
}

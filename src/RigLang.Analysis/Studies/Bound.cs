using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Studies;

/// <summary>
/// What an <c>expect</c> or <c>limit</c> line demands of a result. <c>= 1180 kg ± 15 kg</c> is from 1165 to 1195 kg; without ± it is within half of the
/// last digit written.
/// </summary>
/// <param name="Low">SI; null where there is no lower end.</param>
/// <param name="High">SI; null where there is no upper end.</param>
/// <param name="At">SI; the speed for which it is demanded, where the line says one.</param>
/// <param name="Written">A measure of the line, in whose unit the result is shown beside it.</param>
public sealed record Bound(IResult Result, double? Low, double? High, bool IsStrict, double? At, Measure Written, Fact Line)
{
    /// <summary>Null when the line isn't whole or names no result; that is reported elsewhere.</summary>
    public static Bound? Read(Fact line)
    {
        if (line.WordOf("result") is not { } name || Catalogue.FindResult(name) is not { } result || line.Values.GetValueOrDefault("bound") is not RawValue { Argument: var argument })
        {
            return null;
        }

        double? at = null;
        if (line.Values.GetValueOrDefault("at") is RawValue { Argument: var where })
        {
            at = where is MeasureSyntax speed ? SlotReading.Measure(speed, QuantityKinds.Speed)?.Value : null;
            if (at is null)
            {
                return null;
            }
        }

        Measure? M(MeasureSyntax? syntax) => syntax is null ? null : SlotReading.Measure(syntax, result.Kind);
        switch (argument)
        {
            case RangeSyntax range when M(range.Low) is { } low && M(range.High) is { } high && low.Value <= high.Value:
                return new Bound(result, low.Value, high.Value, false, at, high, line);
            case BoundSyntax { Comparison: Comparison.Equal } bound when M(bound.Measure) is { } value:
                var half = value.HalfWidth > 0 ? value.HalfWidth : value.Unit.HalfWidthToSi(0.5 * Math.Pow(10, -value.Decimals), value.Value);
                return new Bound(result, value.Value - half, value.Value + half, false, at, value, line);
            case BoundSyntax bound when M(bound.Measure) is { } value:
                var isUpper = bound.Comparison is Comparison.Less or Comparison.AtMost;
                var isStrict = bound.Comparison is Comparison.Less or Comparison.Greater;
                return new Bound(result, isUpper ? null : value.Value, isUpper ? value.Value : null, isStrict, at, value, line);
            default:
                return null;
        }
    }

    /// <summary>The result that is judged: the subject's own, or at the speed that the line names. Null when it is a result of something else.</summary>
    public Node<double>? Evaluate(ISubject subject) => Result.Compute(At is { } speed && subject is RigStudy rig ? rig.AtSpeed(speed) : subject);

    /// <summary>On which side the value misses the bound, if it does.</summary>
    public Miss Judge(double value) =>
        High is { } high && (Limits.Exceeds(value, high) || (IsStrict && Limits.Same(value, high))) ? Miss.Above
        : Low is { } low && (Limits.FallsBelow(value, low) || (IsStrict && Limits.Same(value, low))) ? Miss.Below
        : Miss.None;

    /// <summary>The bound as the line has it.</summary>
    public string Words => Line.PlaceOf("bound").Text;
}

/// <summary>How a value misses a bound.</summary>
public enum Miss
{
    None,
    Below,
    Above,
}

using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Editing.Reasons;

/// <summary>In which units results are shown: a system's own, or for each kind of quantity the unit that the author of the facts uses most.</summary>
public sealed class UnitChoice
{
    private const double LargeEnough = 20;
    private const int MostDecimals = 6;

    private readonly Dictionary<QuantityKind, Unit> written;

    private UnitChoice(DisplaySystem system, Dictionary<QuantityKind, Unit> written)
    {
        System = system;
        this.written = written;
    }

    /// <summary>For kinds that the author wrote nothing of.</summary>
    public DisplaySystem System { get; }

    public static UnitChoice Of(DisplaySystem system) => new(system, []);

    /// <summary>As the author of these blocks writes.</summary>
    public static UnitChoice AsWritten(IEnumerable<Block> blocks)
    {
        var counts = new Dictionary<(QuantityKind Kind, Unit Unit), int>();
        foreach (var measure in blocks.SelectMany(block => block.WithInner()).SelectMany(block => block.Facts).SelectMany(fact => fact.Values.Values).OfType<MeasureValue>())
        {
            var key = (measure.Measure.Kind, measure.Measure.Unit);
            counts[key] = counts.GetValueOrDefault(key) + 1;
        }

        var customary = counts.Where(pair => pair.Key.Kind.Metric != pair.Key.Kind.Us).Sum(pair => pair.Key.Unit.IsCustomary ? pair.Value : -pair.Value);
        var units = counts.Where(pair => IsChoice(pair.Key.Kind, pair.Key.Unit)).GroupBy(pair => pair.Key.Kind)
            .ToDictionary(group => group.Key, group => group.MaxBy(pair => pair.Value).Key.Unit);
        return new UnitChoice(customary > 0 ? DisplaySystem.Us : DisplaySystem.Metric, units);
    }

    /// <summary>A value of a result.</summary>
    /// <param name="result">What is shown.</param>
    /// <param name="subject">What it is a result of.</param>
    /// <param name="value">SI.</param>
    public string Write(IResult result, ISubject subject, double value) => IsPlain(result, subject, value, out var own) ? Write(value, result.Kind) : own;

    /// <summary>A quantity in SI.</summary>
    public string Write(double value, QuantityKind kind) =>
        written.TryGetValue(kind, out var unit) ? QuantityWriter.Write(value, unit, Decimals(kind, unit, value)) : QuantityWriter.Write(value, kind, System);

    /// <summary>By how much a result is more or less than it was, with its sign: "+12 kg". In the unit in which both are shown, even where that is no plain multiple.</summary>
    /// <param name="result">What is shown.</param>
    /// <param name="subject">What it is a result of.</param>
    /// <param name="before">SI.</param>
    /// <param name="after">SI.</param>
    /// <param name="like">SI; the value beside it, whose digits it gets.</param>
    public string WriteDifference(IResult result, ISubject subject, double before, double after, double like)
    {
        var sign = after < before ? "-" : "+";
        var kind = result.Kind;
        if (kind.IsDuration)
        {
            return sign + QuantityWriter.WriteDuration(Math.Abs(after - before));
        }

        if (!IsPlain(result, subject, after, out _))
        {
            return sign + result.Write(subject, Math.Abs(after - before), System);
        }

        var unit = written.GetValueOrDefault(kind) ?? kind.UnitFor(System);
        var difference = unit.FromSi(after) - unit.FromSi(before);
        return (difference < 0 ? "-" : "+") + QuantityWriter.Write(unit.ToSi(Math.Abs(difference)), unit, Decimals(kind, unit, like));
    }

    /// <summary>The half-width of a result in the digits of its value: "25 kg"; empty where it is less than is shown.</summary>
    /// <param name="result">What is shown.</param>
    /// <param name="subject">What it is a result of.</param>
    /// <param name="value">SI.</param>
    /// <param name="halfWidth">SI.</param>
    public string WriteHalfWidth(IResult result, ISubject subject, double value, double halfWidth)
    {
        if (!(halfWidth > 0))
        {
            return "";
        }

        var unit = written.GetValueOrDefault(result.Kind) ?? result.Kind.UnitFor(System);
        var text = result.Kind.IsDuration ? QuantityWriter.WriteDuration(halfWidth)
            : result.Kind == QuantityKinds.Money ? result.Write(subject, halfWidth, System)
            : QuantityWriter.Write(unit.ToSi(Math.Abs(unit.FromSi(value + halfWidth) - unit.FromSi(value))), unit, Decimals(result.Kind, unit, value));
        return Shows(text) ? text : "";
    }

    /// <summary>Whether a written difference is more than nothing in the digits that are shown.</summary>
    public static bool Shows(string difference) => difference.Split(' ')[0].Any(c => c is >= '1' and <= '9');

    /// <summary>The same for a table with little room: no digits behind the point where the number is large enough without them.</summary>
    public string Brief(IResult result, ISubject subject, double value)
    {
        if (!IsPlain(result, subject, value, out var own))
        {
            return own;
        }

        var kind = result.Kind;
        var unit = written.GetValueOrDefault(kind) ?? kind.UnitFor(System);
        return kind.IsDuration || !(Math.Abs(unit.FromSi(value)) >= LargeEnough) ? Write(value, kind) : QuantityWriter.Write(value, unit, 0);
    }

    /// <summary>False for a result that is shown in a way of its own: a moment, money.</summary>
    private bool IsPlain(IResult result, ISubject subject, double value, out string own)
    {
        own = result.Write(subject, value, System);
        return own == QuantityWriter.Write(value, result.Kind, System);
    }

    /// <summary>A share has one unit, a duration is written in several, and a reciprocal unit turns more into less.</summary>
    private static bool IsChoice(QuantityKind kind, Unit unit) => !kind.Dimension.IsNone && !kind.IsDuration && (unit.IsLinear || unit.IsAffine) && unit.Currency is null;

    /// <summary>As fine as the kind is shown in its own unit; a small value gets a digit more.</summary>
    private static int Decimals(QuantityKind kind, Unit unit, double value)
    {
        if (unit == kind.Metric || unit == kind.Us)
        {
            return AtLeastTwo(kind.DecimalsFor(unit == kind.Metric ? DisplaySystem.Metric : DisplaySystem.Us), unit, value);
        }

        var step = kind.Metric.HalfWidthToSi(Math.Pow(10, -kind.MetricDecimals), 0) / unit.HalfWidthToSi(1, 0);
        return AtLeastTwo(Math.Clamp((int)Math.Round(-Math.Log10(step) + 0.2), 0, MostDecimals), unit, value);
    }

    /// <summary>A digit more for a value that would be shown with one.</summary>
    private static int AtLeastTwo(int decimals, Unit unit, double value)
    {
        var size = Math.Abs(unit.FromSi(value));
        return size > 0 && size < 10 * Math.Pow(10, -decimals) ? Math.Min(decimals + 1, MostDecimals) : decimals;
    }
}

using System.Text;

namespace RigLang.Quantities;

/// <summary>Writes quantities. What it writes, the reader reads: a point for decimals, no exponent, no minus zero; rounded once, half away from zero.
/// What is not a number is "unknown"; what is infinite is "unlimited".</summary>
public static class QuantityWriter
{
    public const string Unknown = "unknown";
    public const string Unlimited = "unlimited";

    private const int LeastSignificant = 2;
    private const int MostExtraDecimals = 3;
    private const int GroupedFrom = 5;

    /// <summary>In the kind's own unit, with the digits that suit it; a small value gets more digits rather than becoming zero.</summary>
    public static string Write(double si, QuantityKind kind, DisplaySystem system)
    {
        if (kind.IsDuration)
            return WriteDuration(si);
        var unit = kind.UnitFor(system);
        return Scaled(unit.FromSi(si), unit, kind.DecimalsFor(system));
    }

    /// <summary>In this unit with exactly so many digits behind the point.</summary>
    /// <param name="si">In SI.</param>
    /// <param name="unit">To write it in.</param>
    /// <param name="decimals">Digits behind the point; negative rounds to tens, hundreds, …</param>
    /// <param name="grouped">Thousands of long numbers grouped with "_".</param>
    public static string Write(double si, Unit unit, int decimals, bool grouped = false) => WithUnit(unit.FromSi(si), unit, decimals, grouped);

    /// <summary>In the author's unit and digits, compounds as compounds; a small value gets more digits rather than becoming zero.</summary>
    public static string WriteLike(double si, Measure like) =>
        like.Units.Count > 1 ? Compound(si, like.Units, like.Decimals) : Scaled(like.Unit.FromSi(si), like.Unit, like.Decimals);

    /// <summary>A value that is held against a limit, in the limit's unit, with as many digits as it takes to see on which side it is.</summary>
    public static string WriteAgainst(double si, Measure limit)
    {
        var written = WriteLike(si, limit);
        if (!double.IsFinite(si) || Limits.Same(si, limit.Value))
            return written;
        for (var extra = 1; written == WriteLike(limit.Value, limit) && extra <= DecimalText.MostDecimals; extra++)
            written = Write(si, limit.Unit, limit.Decimals + extra);
        return written;
    }

    /// <summary>As its author wrote it.</summary>
    public static string WriteMeasure(Measure measure) => measure.Text;

    /// <summary>The same quantity in a unit of the other system, to the precision that was written ("3500 lb" is "1587.6 kg"); null where both systems have one unit.</summary>
    public static string? WriteInOtherSystem(Measure measure)
    {
        var other = measure.Kind.UnitFor(measure.Units[0].IsCustomary ? DisplaySystem.Metric : DisplaySystem.Us);
        return measure.Kind.Metric == measure.Kind.Us || measure.Kind.Metric.Currency is not null || other == measure.Unit || measure.Kind.IsDuration ? null : WriteConverted(measure, other);
    }

    /// <summary>A measure in another unit, to the precision that was written.</summary>
    public static string WriteConverted(Measure measure, Unit unit)
    {
        var step = unit.HalfWidthFromSi(measure.Unit.HalfWidthToSi(Math.Pow(10, -measure.Decimals), measure.Value), measure.Value);
        var decimals = step > 0 && double.IsFinite(step) ? Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, DecimalText.MostDecimals) : 0;
        return WriteText(measure.Value, measure.HalfWidth, [unit], decimals);
    }

    /// <summary>An amount with the digits that its currency has: "12.50 EUR", "1250 JPY".</summary>
    /// <param name="amount">In the currency's unit.</param>
    /// <param name="code">ISO 4217; an unknown code is written as it is.</param>
    public static string WriteMoney(double amount, string code) =>
        double.IsFinite(amount) ? Join(DecimalText.Round(amount, Currencies.MinorDigits(code)), code) : NotFinite(amount);

    /// <summary>"18 % ± 4 %": the half-width to one digit, two if the first is a one; the value to the same place.</summary>
    public static string WriteWithHalfWidth(double si, double halfWidth, Unit unit)
    {
        var half = Math.Abs(unit.HalfWidthFromSi(halfWidth, si));
        if (!double.IsFinite(half) || half == 0 || !double.IsFinite(unit.FromSi(si)))
            return WithUnit(unit.FromSi(si), unit, DecimalsFor(unit.FromSi(si), 4), trimmed: true);
        var decimals = HalfWidthDecimals(half);
        return WithUnit(unit.FromSi(si), unit, decimals) + " ± " + WithUnit(half, unit, decimals);
    }

    /// <summary>In the kind's own unit; without a half-width as <see cref="Write(double, QuantityKind, DisplaySystem)"/>.</summary>
    public static string WriteWithHalfWidth(double si, double halfWidth, QuantityKind kind, DisplaySystem system)
    {
        if (!double.IsFinite(si) || !double.IsFinite(halfWidth) || halfWidth == 0)
            return Write(si, kind, system);
        if (!kind.IsDuration)
            return WriteWithHalfWidth(si, halfWidth, kind.UnitFor(system));
        return WriteDuration(si) + " ± " + WriteDuration(Math.Abs(halfWidth));
    }

    /// <summary>"1 h 20 min", "25 min", "2 min 30 s", "10 s".</summary>
    /// <param name="seconds">May be negative: "-1 h 20 min".</param>
    public static string WriteDuration(double seconds)
    {
        var size = Math.Abs(seconds);
        return !double.IsFinite(seconds) ? NotFinite(seconds)
            : size < 59.95 ? WithUnit(seconds, Units.Second, 1, trimmed: true)
            : size < 599.5 ? Compound(seconds, [Units.Minute, Units.Second], 0)
            : Compound(seconds, [Units.Hour, Units.Minute], 0);
    }

    internal static string WriteText(double si, double halfWidth, IReadOnlyList<Unit> units, int decimals)
    {
        var unit = units[^1];
        var text = units.Count > 1 ? Compound(si, units, decimals) : WithUnit(unit.FromSi(si), unit, decimals);
        var half = Math.Abs(unit.HalfWidthFromSi(halfWidth, si));
        return half == 0 || !double.IsFinite(half)
            ? text
            : text + " ± " + WithUnit(half, unit, Math.Max(decimals, HalfWidthDecimals(half)), trimmed: true);
    }

    internal static string WithUnit(double number, Unit unit, int decimals, bool grouped = false, bool trimmed = false)
    {
        if (unit == Units.SlopeOneIn && !double.IsNaN(number))
            return OneIn(number);
        if (!double.IsFinite(number))
            return NotFinite(number);
        var digits = DecimalText.Round(number, decimals, trimmed);
        if (grouped)
            digits = Grouped(digits);
        return Join(digits, unit.Symbol);
    }

    /// <summary>A number and its unit: 14 °C, but 225°.</summary>
    internal static string Join(string number, string unit) => unit.Length == 0 ? number : unit is "°" ? number + unit : number + " " + unit;

    /// <summary>Digits behind the point that show a number with so many significant digits.</summary>
    internal static int DecimalsFor(double number, int significant) =>
        number == 0 || !double.IsFinite(number) ? 0 : Math.Max(0, significant - 1 - (int)Math.Floor(Math.Log10(Math.Abs(number))));

    private static string Scaled(double number, Unit unit, int decimals)
    {
        var wanted = Math.Clamp(DecimalsFor(number, LeastSignificant), decimals, decimals + MostExtraDecimals);
        return wanted == decimals || !double.IsFinite(number) || unit == Units.SlopeOneIn
            ? WithUnit(number, unit, decimals)
            : Join(DecimalText.Round(number, wanted, trimmed: true, leastDecimals: decimals), unit.Symbol);
    }

    private static int HalfWidthDecimals(double half)
    {
        var power = (int)Math.Floor(Math.Log10(half));
        var first = DecimalText.Round(half / Math.Pow(10, power), 1);
        // 0.96 rounds to 1.0: one place further left, and then its first digit is a one.
        return first.StartsWith("10", StringComparison.Ordinal) ? -power : first[0] == '1' ? 1 - power : -power;
    }

    private static string Compound(double si, IReadOnlyList<Unit> units, int decimals)
    {
        var last = units[^1];
        var total = last.FromSi(si);
        if (!double.IsFinite(total))
            return NotFinite(total);
        // Rounded as a whole first, so that there is never a "5 ft 12 in".
        var rounded = DecimalText.Round(total, decimals);
        if (!NumberReader.TryRead(rounded.TrimStart('-'), out var rest, out _, out _) || rest >= 1e15 || !Divides(units))
            return WithUnit(total, last, decimals);

        var parts = new List<string>();
        foreach (var unit in units)
        {
            var whole = Math.Floor(rest / Math.Round(unit.Factor / last.Factor) + 1e-9);
            if (unit == last)
                parts.Add(Join(DecimalText.Round(rest, decimals), unit.Symbol));
            else if (whole > 0)
                parts.Add(Join(DecimalText.Round(whole, 0), unit.Symbol));
            rest = Math.Max(0, rest - whole * Math.Round(unit.Factor / last.Factor));
        }

        if (parts.Count > 1 && decimals <= 0 && parts[^1].StartsWith("0 ", StringComparison.Ordinal))
            parts.RemoveAt(parts.Count - 1);
        return (rounded[0] == '-' ? "-" : "") + string.Join(' ', parts);
    }

    private static bool Divides(IReadOnlyList<Unit> units) =>
        units.All(unit => Limits.Same(unit.Factor / units[^1].Factor, Math.Round(unit.Factor / units[^1].Factor)));

    // Below 1:10 a whole n says too little, and the language has no other.
    private static string OneIn(double run)
    {
        if (Math.Abs(run) is >= 10 and < 1e6)
            return (run < 0 ? "-1:" : "1:") + DecimalText.Round(Math.Abs(run), 0);
        var percent = 100 / run;
        return Join(DecimalText.Round(percent, DecimalsFor(percent, 3), trimmed: true), Units.Percent.Symbol);
    }

    private static string Grouped(string digits)
    {
        var start = digits[0] == '-' ? 1 : 0;
        var point = digits.IndexOf('.');
        var end = point < 0 ? digits.Length : point;
        if (end - start < GroupedFrom)
            return digits;
        var grouped = new StringBuilder(digits);
        for (var at = end - 3; at > start; at -= 3)
            grouped.Insert(at, '_');
        return grouped.ToString();
    }

    private static string NotFinite(double number) => double.IsNaN(number) ? Unknown : Unlimited;
}

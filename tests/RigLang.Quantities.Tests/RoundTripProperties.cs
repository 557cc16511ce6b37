using FsCheck.Xunit;

namespace RigLang.Quantities.Tests;

/// <summary>Whatever the writer prints, the reader reads, as the same value to the digits printed.</summary>
public class RoundTripProperties
{
    private static readonly QuantityKind[] Kinds = [.. QuantityKinds.All];

    [Property(MaxTest = 2000)]
    public bool What_is_written_in_the_units_of_a_kind_is_read_back(int which, double value, bool us)
    {
        var kind = Kinds[(which & int.MaxValue) % Kinds.Length];
        var si = Possible(value, kind);
        var system = us ? DisplaySystem.Us : DisplaySystem.Metric;
        var text = QuantityWriter.Write(si, kind, system);
        var reading = Written.Read(text, kind);
        if (reading.Measure is not { } measure)
            return IsRoundedAway(text, kind);
        return kind.IsDuration
            ? Math.Abs(measure.Value - si) <= 30 + 1e-9 * Math.Abs(si)
            : Math.Abs(measure.Unit.FromSi(measure.Value) - measure.Unit.FromSi(si)) <= 0.5000001 * Math.Pow(10, -kind.DecimalsFor(system)) + 1e-12 * Math.Abs(measure.Unit.FromSi(si));
    }

    [Property(MaxTest = 1000)]
    public bool What_is_written_with_a_half_width_is_read_back(int which, double value, double half)
    {
        var kind = Kinds[(which & int.MaxValue) % Kinds.Length];
        if (kind.IsCount)
            return true;
        var si = Possible(value, kind);
        var text = QuantityWriter.WriteWithHalfWidth(si, Math.Abs(Possible(half, kind)) / 10, kind, DisplaySystem.Metric);
        return Written.Read(text, kind).Measure is not null || IsRoundedAway(text, kind);
    }

    [Property(MaxTest = 1000)]
    public bool A_measure_written_in_its_own_digits_is_the_same_measure(int number, byte decimals, int which)
    {
        var units = Units.All.Where(unit => unit.IsLinear && !unit.Dimension.IsNone && unit != Units.Kelvin).ToArray();
        var unit = units[(which & int.MaxValue) % units.Length];
        if (Kinds.FirstOrDefault(kind => kind.Accepts(unit)) is not { } kind)
            return true;
        var digits = decimals % 6;
        var measure = Measure.Of(kind, number / Math.Pow(10, digits), unit, digits);
        var again = Written.Read(measure.Text, kind).Measure!;
        return Measure.SameValue(measure, again) && again.Decimals == digits && QuantityWriter.WriteLike(again.Value, again) == measure.Text;
    }

    [Property(MaxTest = 1000)]
    public bool Rounding_errs_by_half_a_digit_at_most(double value, byte decimals)
    {
        if (!double.IsFinite(value))
            return true;
        var digits = decimals % 8;
        var number = Math.IEEERemainder(value, 1e6);
        NumberReader.TryRead(QuantityWriter.Write(number, Units.One, digits), out var read, out _, out var problem);
        return problem is null && Math.Abs(read - number) <= 0.5 * Math.Pow(10, -digits) + 1e-9;
    }

    [Property(MaxTest = 2000)]
    public bool No_text_makes_a_reader_throw(string? first, string? second, int which)
    {
        var kind = Kinds[(which & int.MaxValue) % Kinds.Length];
        var (number, unit) = (first ?? "", second ?? "");
        _ = NumberReader.TryRead(number, out var value, out _, out var problem);
        _ = UnitTable.TryRead(unit, kind, out _, out _);
        _ = MomentReader.TryRead(number + " " + unit, out _, out _);
        _ = MomentReader.TryReadYearWeek(number, out _, out _);
        var reading = MeasureReader.Read([new(false, unit, [new(number, unit), new(unit, null)])], [new(number, unit)], kind);
        return double.IsFinite(value) && (reading.Measure is not null || reading.HasErrors) && (problem is null || problem.Message.Length > 0);
    }

    [Property(MaxTest = 3000)]
    public bool No_mixture_of_signs_makes_a_reader_throw(int seed, byte length)
    {
        const string Signs = "0123456789.,_-+−/:eE'kKgGmMsShHlLbBfFtTiInNJWr°%²³^23·*⋅$€£µμ½ \0\ud83d\udeb4";
        var random = new Random(seed);
        string Text() => new([.. Enumerable.Range(0, length % 12).Select(_ => Signs[random.Next(Signs.Length)])]);
        return No_text_makes_a_reader_throw(Text(), Text(), seed);
    }

    /// <summary>A value that the kind can have.</summary>
    private static double Possible(double value, QuantityKind kind)
    {
        var si = double.IsFinite(value) ? Math.Clamp(value, -1e12, 1e12) : 1;
        if (kind.IsCount)
            return Math.Abs(Math.Round(si % 1000));
        if (kind.IsTemperature)
            return 1 + Math.Abs(si % 1000); // rounding must not pass below absolute zero
        if (kind.Family is UnitFamily.FuelPerDistance or UnitFamily.EnergyPerDistance)
            return Math.Abs(si) * (kind.Family == UnitFamily.FuelPerDistance ? 1e-8 : 1000) + kind.Metric.Factor;
        return si;
    }

    /// <summary>"0.0 us-mpg" of a monstrous consumption says nothing that could be read.</summary>
    private static bool IsRoundedAway(string text, QuantityKind kind) => kind.Us.IsReciprocal && text.StartsWith('0');
}

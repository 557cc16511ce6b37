namespace RigLang.Quantities;

/// <summary>A quantity as somebody wrote it: the value in SI, what is known of its uncertainty, and the author's unit and digits.</summary>
public sealed record Measure
{
    internal Measure(QuantityKind kind, double value, double halfWidth, IReadOnlyList<Unit> units, int decimals, string text)
    {
        Kind = kind;
        Value = value;
        HalfWidth = halfWidth;
        Units = units;
        Decimals = decimals;
        Text = text;
    }

    public QuantityKind Kind { get; }

    /// <summary>In SI; of a temperature, in kelvin; of a slope, the tangent; of money, in its currency.</summary>
    public double Value { get; }

    /// <summary>In SI: the half-width that holds the true value 19 times out of 20 (two standard deviations); 0 when none was given.</summary>
    public double HalfWidth { get; }

    /// <summary>The author's unit; of a compound the smallest ("33 ft 4 in": in).</summary>
    public Unit Unit => Units[^1];

    /// <summary>The author's units: one, or those of a compound from large to small.</summary>
    public IReadOnlyList<Unit> Units { get; }

    /// <summary>Digits behind the point, as written, in <see cref="Unit"/>.</summary>
    public int Decimals { get; }

    /// <summary>As written, with one blank between the words: "2 x 17 kg + 4 kg", "1790 kg ± 15 kg".</summary>
    public string Text { get; }

    /// <summary>A measure made by code: a documented estimate, a result that is to be written in somebody's unit.</summary>
    /// <param name="kind">What is measured.</param>
    /// <param name="number">In <paramref name="unit"/>.</param>
    /// <param name="unit">A unit that the kind accepts.</param>
    /// <param name="decimals">Digits behind the point when written.</param>
    /// <param name="halfWidth">In <paramref name="unit"/>.</param>
    public static Measure Of(QuantityKind kind, double number, Unit unit, int decimals, double halfWidth = 0)
    {
        var value = unit.ToSi(number);
        var half = unit.HalfWidthToSi(halfWidth, value);
        return new(kind, value, half, [unit], decimals, QuantityWriter.WriteText(value, half, [unit], decimals));
    }

    /// <summary>The same quantity with another value, in the same unit and digits: what a fix writes.</summary>
    public Measure With(double value, double halfWidth = 0) =>
        new(Kind, value, halfWidth, Units, Decimals, QuantityWriter.WriteText(value, halfWidth, Units, Decimals));

    /// <summary>Whether both say the same, whatever the units: 3500 lb and 1587.573295 kg.</summary>
    public static bool SameValue(Measure a, Measure b) =>
        a.Kind.Dimension == b.Kind.Dimension && a.Unit.Currency == b.Unit.Currency && Limits.Same(a.Value, b.Value) && Limits.Same(a.HalfWidth, b.HalfWidth);

    /// <summary>Whether one is the other converted and rounded: 3500 lb and 1587.6 kg. Two figures in one unit must be equal.</summary>
    public static bool SameRewritten(Measure a, Measure b) =>
        SameValue(a, b)
        || (a.Unit != b.Unit && a.Kind.Dimension == b.Kind.Dimension && a.Unit.Currency == b.Unit.Currency && (IsRounded(a, b) || IsRounded(b, a)));

    /// <summary>Same kind, value, half-width, and written alike: what a reader of facts takes for unchanged.</summary>
    public bool Equals(Measure? other) =>
        other is not null && Kind == other.Kind && Value.Equals(other.Value) && HalfWidth.Equals(other.HalfWidth)
        && Decimals == other.Decimals && Text == other.Text && Units.SequenceEqual(other.Units);

    public override int GetHashCode() => HashCode.Combine(Kind, Value, HalfWidth, Text);

    public override string ToString() => Text;

    // Few digits round to almost anything: 3 kg is not 7 lb.
    private const double MostRounding = 0.005;
    private const double MostHalfWidthRounding = 0.05;

    private static bool IsRounded(Measure exact, Measure rounded) =>
        Near(exact.Value, rounded.Value, MostRounding)
        && Near(exact.HalfWidth, rounded.HalfWidth, MostHalfWidthRounding)
        && DecimalText.Round(rounded.Unit.FromSi(exact.Value), rounded.Decimals) == DecimalText.Round(rounded.Unit.FromSi(rounded.Value), rounded.Decimals);

    private static bool Near(double a, double b, double share) => Math.Abs(a - b) <= share * Math.Max(Math.Abs(a), Math.Abs(b));
}

namespace RigLang.Quantities;

/// <summary>What a quantity measures, as whole exponents of the base quantities. Angle and money count as base quantities here, so that
/// N·m/rad is not N·m and a price is not a number. All zero is dimensionless.</summary>
public readonly record struct Dimension(
    sbyte Metre = 0, sbyte Kilogram = 0, sbyte Second = 0, sbyte Kelvin = 0, sbyte Ampere = 0, sbyte Radian = 0, sbyte Currency = 0)
{
    public static readonly Dimension None;
    public static readonly Dimension Length = new(Metre: 1);
    public static readonly Dimension Mass = new(Kilogram: 1);
    public static readonly Dimension Time = new(Second: 1);
    public static readonly Dimension Temperature = new(Kelvin: 1);
    public static readonly Dimension Current = new(Ampere: 1);
    public static readonly Dimension Angle = new(Radian: 1);
    public static readonly Dimension Money = new(Currency: 1);
    public static readonly Dimension Area = Length.Pow(2);
    public static readonly Dimension Volume = Length.Pow(3);
    public static readonly Dimension Speed = Length / Time;
    public static readonly Dimension Acceleration = Speed / Time;
    public static readonly Dimension Force = Mass * Acceleration;
    public static readonly Dimension Pressure = Force / Area;
    public static readonly Dimension Energy = Force * Length;
    public static readonly Dimension Power = Energy / Time;

    public bool IsNone => this == None;

    public static Dimension operator *(Dimension a, Dimension b) => new(
        Sum(a.Metre, b.Metre), Sum(a.Kilogram, b.Kilogram), Sum(a.Second, b.Second), Sum(a.Kelvin, b.Kelvin),
        Sum(a.Ampere, b.Ampere), Sum(a.Radian, b.Radian), Sum(a.Currency, b.Currency));

    public static Dimension operator /(Dimension a, Dimension b) => a * b.Pow(-1);

    public Dimension Pow(int exponent) => new(
        Times(Metre, exponent), Times(Kilogram, exponent), Times(Second, exponent), Times(Kelvin, exponent),
        Times(Ampere, exponent), Times(Radian, exponent), Times(Currency, exponent));

    /// <summary>In base units, "kg·m/s²"; "1" for a pure number.</summary>
    public override string ToString()
    {
        (string Symbol, int Exponent)[] powers =
            [("kg", Kilogram), ("m", Metre), ("A", Ampere), ("K", Kelvin), ("rad", Radian), ("money", Currency), ("s", Second)];
        var over = string.Join('·', powers.Where(p => p.Exponent > 0).Select(p => p.Symbol + Power(p.Exponent)));
        var under = string.Concat(powers.Where(p => p.Exponent < 0).Select(p => "/" + p.Symbol + Power(-p.Exponent)));
        return (over.Length == 0 ? "1" : over) + under;

        static string Power(int exponent) => exponent switch { 1 => "", 2 => "²", 3 => "³", _ => "^" + exponent };
    }

    // Saturating: an absurd unit must stay a wrong unit, not wrap round to a right one.
    private static sbyte Sum(int a, int b) => (sbyte)Math.Clamp(a + b, -100, 100);

    private static sbyte Times(int a, int b) => (sbyte)Math.Clamp((long)a * b, -100, 100);
}

namespace RigLang.Quantities;

/// <summary>One unit. Immutable; listed units are one object each, so reference equality holds for them.</summary>
public sealed class Unit
{
    internal Unit(string symbol, string name, Dimension dimension, double factor, UnitFamily family = UnitFamily.Plain)
    {
        Symbol = symbol;
        Name = name;
        Dimension = dimension;
        Factor = factor;
        Family = family;
    }

    /// <summary>As listed and as written by the writer: "kg", "m²", "N·m".</summary>
    public string Symbol { get; }

    /// <summary>In words, "kilogram"; a composed unit is named by its symbol.</summary>
    public string Name { get; }

    /// <summary>Of the value in SI. A reciprocal unit (mpg) has the dimension of what it is the reciprocal of (volume per length).</summary>
    public Dimension Dimension { get; }

    /// <summary>SI = number × Factor + Offset; a reciprocal unit: SI = Factor ÷ number.</summary>
    public double Factor { get; }

    /// <summary>Of an affine temperature scale, in kelvin; zero for everything else.</summary>
    public double Offset { get; internal init; }

    public UnitFamily Family { get; }

    /// <summary>ISO 4217 code for money and prices, else null.</summary>
    public string? Currency { get; internal init; }

    /// <summary>More of it is less: miles per gallon, km/L, mi/kWh, and a slope of 1:n.</summary>
    public bool IsReciprocal { get; internal init; }

    /// <summary>A slope given as an angle: the value is its tangent.</summary>
    public bool IsTangent { get; internal init; }

    /// <summary>Inch-pound units (also the imperial ones): a converted figure is offered in the same habit.</summary>
    public bool IsCustomary { get; internal init; }

    /// <summary>Zero of it is not zero of the quantity: °C, °F.</summary>
    public bool IsAffine => Offset != 0;

    /// <summary>A multiple of the SI unit and no more, so that sums, counts and compounds make sense.</summary>
    public bool IsLinear => !IsAffine && !IsReciprocal && !IsTangent;

    public double ToSi(double number) =>
        IsReciprocal ? Factor / number
        : IsTangent ? Math.Tan(number * Factor)
        : number * Factor + Offset;

    public double FromSi(double si) =>
        IsReciprocal ? Factor / si
        : IsTangent ? Math.Atan(si) / Factor
        : (si - Offset) / Factor;

    /// <summary>A half-width given in this unit around a value, in SI: exact for linear and affine units, first order for the others.</summary>
    public double HalfWidthToSi(double halfWidth, double siValue) =>
        IsReciprocal ? siValue * siValue / Factor * halfWidth
        : IsTangent ? (1 + siValue * siValue) * Factor * halfWidth
        : halfWidth * Factor;

    /// <summary>The inverse of <see cref="HalfWidthToSi"/>.</summary>
    public double HalfWidthFromSi(double siHalfWidth, double siValue)
    {
        var one = HalfWidthToSi(1, siValue);
        return one == 0 ? 0 : siHalfWidth / one;
    }

    public override string ToString() => Symbol;
}

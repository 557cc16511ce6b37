namespace RigLang.Quantities;

/// <summary>What a fact or a result is measured in: a dimension together with the units that are wanted for it.</summary>
public sealed class QuantityKind
{
    internal QuantityKind(string name, Dimension dimension, Unit metric, int metricDecimals, Unit us, int usDecimals, params Unit[] exampleUnits)
    {
        Name = name;
        Dimension = dimension;
        Metric = metric;
        MetricDecimals = metricDecimals;
        Us = us;
        UsDecimals = usDecimals;
        ExampleUnits = exampleUnits;
    }

    /// <summary>The word shown: "length", "gauge pressure".</summary>
    public string Name { get; }

    public Dimension Dimension { get; }

    public Unit Metric { get; }

    public Unit Us { get; }

    /// <summary>Digits behind the point that suit an ordinary value in <see cref="Metric"/>.</summary>
    public int MetricDecimals { get; }

    /// <summary>Digits behind the point that suit an ordinary value in <see cref="Us"/>.</summary>
    public int UsDecimals { get; }

    /// <summary>The units offered, in order. Any other unit that <see cref="Accepts"/> takes is read as well.</summary>
    public IReadOnlyList<Unit> ExampleUnits { get; }

    /// <summary>Which of the units of this dimension belong here: a torque is not given in kWh.</summary>
    public UnitFamily Family { get; internal init; }

    /// <summary>A bare number is a full answer: 0.0095.</summary>
    public bool AllowsBare { get; internal init; }

    /// <summary>No unit at all: 4.50, not 450 %.</summary>
    public bool BareOnly { get; internal init; }

    /// <summary>Whole numbers only.</summary>
    public bool IsCount { get; internal init; }

    /// <summary>The tangent of a slope: read from %, ‰, ° and 1:n.</summary>
    public bool IsSlope { get; internal init; }

    /// <summary>A temperature on a scale, not a difference.</summary>
    public bool IsTemperature { get; internal init; }

    /// <summary>A difference of temperatures: °C and °F without their zero.</summary>
    public bool IsTemperatureDifference { get; internal init; }

    /// <summary>Written as "1 h 20 min".</summary>
    public bool IsDuration { get; internal init; }

    /// <summary>"± 2 %" means two points, since the quantity itself is a share.</summary>
    public bool PercentIsPoints => Dimension.IsNone && !BareOnly;

    public Unit UnitFor(DisplaySystem system) => system == DisplaySystem.Us ? Us : Metric;

    public int DecimalsFor(DisplaySystem system) => system == DisplaySystem.Us ? UsDecimals : MetricDecimals;

    /// <summary>Whether a number with this unit is a value of this kind.</summary>
    public bool Accepts(Unit unit)
    {
        if (unit.Dimension != Dimension)
            return false;
        if (BareOnly || unit == Units.One)
            return unit == Units.One && (BareOnly || AllowsBare);
        if (unit.IsTangent || unit == Units.SlopeOneIn)
            return IsSlope;
        // A unit put together from base units (kg·m²/s²) is nobody's own: torque and energy both take it.
        return unit.Family == Family || (unit.Family == UnitFamily.Plain && Family is UnitFamily.Torque or UnitFamily.Energy);
    }

    /// <summary>The meaning of a symbol that means something else elsewhere: ° on a slope, °C of a difference.</summary>
    internal Unit OwnMeaning(Unit unit) =>
        IsSlope && unit == Units.Degree ? Units.SlopeDegree
        : IsTemperatureDifference && unit == Units.Celsius ? Units.CelsiusDifference
        : IsTemperatureDifference && unit == Units.Fahrenheit ? Units.FahrenheitDifference
        : unit;

    public override string ToString() => Name;
}

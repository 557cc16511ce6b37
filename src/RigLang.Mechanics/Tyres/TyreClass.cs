namespace RigLang.Mechanics;

/// <summary>Families of tyres that share one way of rating load against pressure.</summary>
public enum TyreClass
{
    /// <summary>Passenger tyre by the European rules (no letter before the size).</summary>
    Passenger,

    /// <summary>Passenger tyre by the North American rules (P before the size).</summary>
    PMetric,

    /// <summary>Light truck (LT before the size).</summary>
    LightTruck,

    /// <summary>Special trailer (ST before the size).</summary>
    SpecialTrailer,

    /// <summary>European commercial tyre (C behind the size).</summary>
    Commercial,
}

/// <summary>How the rating of a tyre class falls with pressure.</summary>
public static class TyreClasses
{
    /// <summary>
    /// The exponent n of load = rating · (pressure / rated pressure)^n. Values from memory of the yearbooks: P-metric 0.5,
    /// LT and ST 0.6 to 0.7 (0.65 here), European passenger and commercial 0.8.
    /// </summary>
    public static double PressureExponent(TyreClass tyreClass) => tyreClass switch
    {
        TyreClass.PMetric => 0.5,
        TyreClass.LightTruck or TyreClass.SpecialTrailer => 0.65,
        TyreClass.Passenger or TyreClass.Commercial => 0.8,
        _ => double.NaN,
    };

    /// <summary>Whether a tyre of the class is a passenger-car tyre, whose rating the US rules divide by 1.10 on trailers and trucks.</summary>
    public static bool IsPassengerCar(TyreClass tyreClass) => tyreClass is TyreClass.Passenger or TyreClass.PMetric;
}

namespace RigLang.Mechanics;

/// <summary>European licence categories for cars with trailers.</summary>
public enum LicenceCategory
{
    /// <summary>A mass is not known.</summary>
    NotKnown,

    B,

    /// <summary>B with the key number 96.</summary>
    B96,

    BE,

    /// <summary>None of the car categories.</summary>
    Larger,
}

/// <summary>
/// Which licence a combination asks for, by gross masses in kg. Source: directive 2006/126/EC as German law (FeV 6(1), 6a) carries it, read in the state of
/// 2022-03-26.
/// </summary>
public static class EuropeanLicence
{
    public static LicenceCategory Needed(double vehicleGross, double trailerGross)
    {
        if (!(vehicleGross > 0) || !(trailerGross >= 0))
            return LicenceCategory.NotKnown;
        double combination = vehicleGross + trailerGross;
        if (vehicleGross > 3500)
            return LicenceCategory.Larger;
        if (trailerGross <= 750 || combination <= 3500)
            return LicenceCategory.B;
        if (combination <= 4250)
            return LicenceCategory.B96;
        return trailerGross <= 3500 ? LicenceCategory.BE : LicenceCategory.Larger;
    }
}

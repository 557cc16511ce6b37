namespace RigLang.Mechanics;

/// <summary>Fixed numbers that several models share.</summary>
public static class Constants
{
    /// <summary>Standard gravity, m/s². Source: quoted as a_g in 40 CFR 1066.210.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Gravity as the coupling values of UN R55 round it, m/s².</summary>
    public const double CouplingGravity = 9.81;

    /// <summary>Air density at sea level of the standard atmosphere, kg/m³. Source: ISO 2533.</summary>
    public const double StandardAirDensity = 1.225;
}

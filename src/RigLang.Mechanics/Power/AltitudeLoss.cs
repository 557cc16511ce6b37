using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>How an engine breathes.</summary>
public enum Aspiration
{
    Natural,
    Turbo,
}

/// <summary>What thin air leaves of a combustion engine's power.</summary>
public static class AltitudeLoss
{
    /// <summary>
    /// Share of the rated power. Natural aspiration: in proportion to air density, with 85 % mechanical efficiency so that the loss is somewhat larger (after
    /// the form of SAE J1349, value from
    /// memory). Turbo: nothing to 1500 m of standard air, then a third of that loss (common practice; makers differ widely).
    /// </summary>
    /// <param name="density">Air density, kg/m³, above zero.</param>
    /// <param name="aspiration">How the engine breathes.</param>
    public static double Share(double density, Aspiration aspiration)
    {
        double ratio = Positive(density) / Constants.StandardAirDensity;
        if (aspiration == Aspiration.Natural)
            return Brake(Math.Min(1, ratio));
        double spared = Atmosphere.AtGeopotential(1500).Density / Constants.StandardAirDensity;
        return 1 - ((1 - Brake(Math.Min(1, ratio / spared))) / 3);
    }

    private static double Brake(double ratio) => Math.Max(0, (ratio - 0.15) / 0.85);
}

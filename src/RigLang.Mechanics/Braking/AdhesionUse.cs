using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Grip that each axle of a braking vehicle asks for. The axle that asks for more locks first; the rear must not. Source: 49 CFR 571.135 S7.4.4(g).
/// </summary>
/// <param name="Front">Brake force over dynamic load of the front axle.</param>
/// <param name="Rear">Of the rear axle.</param>
public readonly record struct AdhesionUse(double Front, double Rear)
{
    /// <param name="loads">Static axle loads, N.</param>
    /// <param name="wheelbase">m, above zero.</param>
    /// <param name="massCentreHeight">m.</param>
    /// <param name="frontShare">Share of the brake force on the front axle, 0 to 1.</param>
    /// <param name="rate">Braking rate, deceleration over gravity.</param>
    public static AdhesionUse At(AxleLoads loads, double wheelbase, double massCentreHeight, double frontShare, double rate)
    {
        double transfer = rate * massCentreHeight * loads.Total / Positive(wheelbase);
        double force = NotNegative(rate) * loads.Total, share = Within(frontShare, 0, 1);
        return new AdhesionUse(Finite(share * force / Positive(loads.Front + transfer)), Finite((1 - share) * force / Positive(loads.Rear - transfer)));
    }
}

namespace RigLang.Mechanics;

/// <summary>A trailer as the hitch feels it.</summary>
/// <param name="Mass">kg.</param>
/// <param name="TongueMass">What the coupling carries when the trailer stands level and uncoupled from spring bars, kg.</param>
/// <param name="Axle">Coupling to axle, or to the equivalent axle of a group, m.</param>
public readonly record struct TrailerLoad(double Mass, double TongueMass, double Axle)
{
    /// <summary>Mass centre behind the coupling, m.</summary>
    public double MassCentre => TrailerStatics.MassCentre(Mass, TongueMass, Axle);

    /// <summary>Load on the axle group with the coupling carried freely, N.</summary>
    public double AxleLoad => Constants.Gravity * (Mass - TongueMass);
}

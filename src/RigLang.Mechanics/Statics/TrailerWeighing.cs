using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A trailer by the scale: what it weighs and where its mass centre is, loaded as it stood there and empty.</summary>
public static class TrailerWeighing
{
    /// <summary>Mass, tongue and mass centre from two weighings, the trailer level and uncoupled both times. By moments about the coupling.</summary>
    /// <param name="whole">Axles and coupling together on the platform, N, above zero.</param>
    /// <param name="axles">The axles alone, the coupling on its jockey wheel or stand beside the platform, N.</param>
    /// <param name="axle">Coupling to (equivalent) axle, m, above zero.</param>
    /// <param name="support">Coupling to where the stand meets the ground, m, rearward; zero when the coupling itself is carried.</param>
    public static TrailerLoad FromTwo(double whole, double axles, double axle, double support = 0)
    {
        // The stand carries what the axles do not; moments about the coupling turn that into what the coupling itself would carry.
        double stand = Positive(whole) - NotNegative(axles);
        double centre = ((axles * Positive(axle)) + (stand * Finite(support))) / whole;
        return new TrailerLoad(Finite(whole / Constants.Gravity), TrailerStatics.TongueMass(whole / Constants.Gravity, centre, axle), axle);
    }

    /// <summary>The same trailer with known masses taken out.</summary>
    /// <param name="weighed">As it was weighed.</param>
    /// <param name="items">What was aboard: kg at m behind the coupling.</param>
    public static TrailerLoad Without(TrailerLoad weighed, ReadOnlySpan<PointMass> items)
    {
        TrailerLoad aboard = TrailerStatics.FromItems(items, weighed.Axle);
        return new TrailerLoad(Positive(weighed.Mass - aboard.Mass), Finite(weighed.TongueMass - aboard.TongueMass), weighed.Axle);
    }
}

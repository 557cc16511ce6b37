using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>A trailer as a beam carried by its coupling and by one axle, or by one equivalent axle of a group.</summary>
public static class TrailerStatics
{
    /// <summary>Tongue mass, kg; negative when the trailer lifts the ball.</summary>
    /// <param name="mass">Trailer mass, kg.</param>
    /// <param name="massCentre">Coupling to mass centre, m.</param>
    /// <param name="axle">Coupling to (equivalent) axle, m, above zero.</param>
    public static double TongueMass(double mass, double massCentre, double axle) => Finite(mass * (Positive(axle) - massCentre) / axle);

    /// <summary>Mass centre behind the coupling, m, from a weighed tongue.</summary>
    public static double MassCentre(double mass, double tongueMass, double axle) => Finite(Positive(axle) * (1 - (tongueMass / Positive(mass))));

    /// <summary>Mass and tongue from everything aboard.</summary>
    /// <param name="items">Masses at positions rearward from the coupling, m; ahead of it negative.</param>
    /// <param name="axle">Coupling to (equivalent) axle, m, above zero.</param>
    public static TrailerLoad FromItems(ReadOnlySpan<PointMass> items, double axle)
    {
        double mass = 0, tongue = 0;
        foreach (PointMass item in items)
        {
            mass += item.Mass;
            tongue += TongueMass(item.Mass, item.Position, axle);
        }

        return new TrailerLoad(Finite(mass), Finite(tongue), Positive(axle));
    }

    /// <summary>
    /// Tongue mass, kg, from a small scale under a beam: the coupling stands on the beam, <paramref name="toScale"/> metres from the scale
    /// and <paramref name="toSupport"/> metres from the fixed support.
    /// </summary>
    public static double TongueFromBeam(double reading, double toScale, double toSupport) =>
        Finite(reading * (NotNegative(toScale) + Positive(toSupport)) / toSupport);
}

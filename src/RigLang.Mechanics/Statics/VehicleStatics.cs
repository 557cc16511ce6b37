using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Axle loads of a tow vehicle as a rigid beam on two supports. Moments about one axle give the load of the other.
/// Valid for small pitch; the front and rear loads always sum to the weight.
/// </summary>
public static class VehicleStatics
{
    /// <summary>Axle loads from everything aboard, standing on level ground.</summary>
    /// <param name="items">Masses at positions rearward from the front axle, m; ahead of it negative, behind the rear axle beyond the wheelbase.</param>
    /// <param name="wheelbase">Front to rear axle, m, above zero.</param>
    /// <returns>Loads in N.</returns>
    public static AxleLoads FromItems(ReadOnlySpan<PointMass> items, double wheelbase)
    {
        double weight = 0, moment = 0;
        foreach (PointMass item in items)
        {
            weight += item.Mass;
            moment += item.Mass * item.Position;
        }

        double rear = Constants.Gravity * moment / Positive(wheelbase);
        return new AxleLoads(Finite((Constants.Gravity * weight) - rear), Finite(rear));
    }

    /// <summary>Distance of the mass centre behind the front axle, m.</summary>
    /// <param name="loads">Axle loads on level ground, N, their sum above zero.</param>
    /// <param name="wheelbase">m, above zero.</param>
    public static double MassCentre(AxleLoads loads, double wheelbase) => Finite(Positive(wheelbase) * loads.Rear / Positive(loads.Total));

    /// <summary>Axle loads on a slope, while speeding up or slowing down, with air force and the pull of a trailer.</summary>
    /// <returns>Loads square to the road, N. Their sum is m g cosθ plus the ball's force.</returns>
    public static AxleLoads Moving(VehicleBalance v)
    {
        double wheelbase = Positive(v.Wheelbase);
        double weight = Positive(v.Mass) * Constants.Gravity;
        double along = weight * Slope.Sine(v.Grade), across = weight * Slope.Cosine(v.Grade);
        double pitching = ((along + (v.Mass * v.Acceleration)) * v.MassCentreHeight) + (v.AirForce * v.AirForceHeight) + (v.Pull * v.BallHeight) - v.Couple;
        double front = ((across * (wheelbase - v.MassCentre)) - pitching - (v.BallForce * v.Overhang)) / wheelbase;
        double rear = ((across * v.MassCentre) + pitching + (v.BallForce * (wheelbase + v.Overhang))) / wheelbase;
        return new AxleLoads(Finite(front), Finite(rear));
    }
}

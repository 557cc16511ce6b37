using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>How a vehicle stands after its axle loads changed.</summary>
/// <param name="FrontSink">How far the body over the front axle came down, m.</param>
/// <param name="RearSink">How far the body over the rear axle came down, m.</param>
/// <param name="Pitch">Nose-up turn, rad (small angles).</param>
/// <param name="BallDrop">How far the ball came down, m.</param>
public readonly record struct Attitude(double FrontSink, double RearSink, double Pitch, double BallDrop)
{
    /// <summary>Attitude from the change of the axle loads and the springs.</summary>
    /// <param name="change">Change of axle loads, N.</param>
    /// <param name="frontRate">Ride rate of the front axle at the wheels, both together, N/m, above zero.</param>
    /// <param name="rearRate">The rear axle's, N/m, above zero; not read when the rear levels itself.</param>
    /// <param name="wheelbase">m, above zero.</param>
    /// <param name="overhang">Rear axle to ball, m.</param>
    /// <param name="levelledRear">The rear suspension returns to its height by itself (the loads shift as ever).</param>
    public static Attitude FromLoads(AxleLoads change, double frontRate, double rearRate, double wheelbase, double overhang, bool levelledRear = false)
    {
        double front = Finite(change.Front / Positive(frontRate));
        double rear = levelledRear ? 0 : Finite(change.Rear / Positive(rearRate));
        double pitch = (rear - front) / Positive(wheelbase);
        return new Attitude(front, rear, Finite(pitch), Finite(rear + (pitch * overhang)));
    }
}

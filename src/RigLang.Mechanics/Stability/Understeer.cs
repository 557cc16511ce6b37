using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// The understeer gradient K, rad/(m/s²): how much more steer a curve asks for per lateral acceleration. Positive understeers; negative oversteers and has a
/// critical speed. In steady turning the trailer puts the tongue's share of side force on the ball, the same as vertically.
/// </summary>
public static class Understeer
{
    /// <summary>Of a vehicle alone.</summary>
    /// <param name="mass">kg, above zero.</param>
    /// <param name="toFront">Mass centre to front axle, m.</param>
    /// <param name="toRear">Mass centre to rear axle, m.</param>
    /// <param name="frontStiffness">Whole axle, N/rad, above zero.</param>
    /// <param name="rearStiffness">Whole axle, N/rad, above zero.</param>
    public static double Solo(double mass, double toFront, double toRear, double frontStiffness, double rearStiffness) =>
        Coupled(mass, toFront, toRear, 0, 0, frontStiffness, rearStiffness);

    /// <summary>Of a coupled vehicle. Spring bars do not move these side forces, only the stiffness of the axles through their loads.</summary>
    /// <param name="mass">kg, above zero.</param>
    /// <param name="toFront">Mass centre to front axle, m.</param>
    /// <param name="toRear">Mass centre to rear axle, m.</param>
    /// <param name="overhang">Rear axle to ball, m.</param>
    /// <param name="tongueMass">kg, by the trailer's masses; not the net ball force under spring bars.</param>
    /// <param name="frontStiffness">Whole axle, N/rad, above zero.</param>
    /// <param name="rearStiffness">Whole axle, N/rad, above zero.</param>
    public static double Coupled(double mass, double toFront, double toRear, double overhang, double tongueMass, double frontStiffness, double rearStiffness)
    {
        double wheelbase = Positive(toFront + toRear);
        double front = ((Positive(mass) * toRear) - (tongueMass * overhang)) / wheelbase;
        double rear = ((mass * toFront) + (tongueMass * (wheelbase + overhang))) / wheelbase;
        return Finite((front / Positive(frontStiffness)) - (rear / Positive(rearStiffness)));
    }

    /// <summary>Of a rig.</summary>
    public static double Of(LateralRig rig) => Coupled(
        rig.VehicleMass, rig.ToFront, rig.ToRear, rig.ToBall - rig.ToRear, rig.TongueMass, rig.FrontStiffness, rig.RearStiffness);

    /// <summary>The gradient in degrees of steer per g of lateral acceleration (g rounded to 9.81 as the trade does).</summary>
    public static double DegreesPerG(double understeer) => Finite(understeer * 180 / Math.PI * 9.81);
}

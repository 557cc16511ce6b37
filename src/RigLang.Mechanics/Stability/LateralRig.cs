using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Everything that the linear single-track model of a vehicle and its trailer reads. Valid for constant speed, lateral acceleration below 0.3 to 0.4 g, tyres
/// linear and
/// without relaxation, no roll. Relaxing tyres and a compliant hitch damp less: expect the real critical speed a few km/h lower.
/// </summary>
public sealed record LateralRig
{
    /// <summary>kg, above zero.</summary>
    public required double VehicleMass { get; init; }

    /// <summary>Yaw inertia of the vehicle about its mass centre, kg·m², above zero.</summary>
    public required double VehicleInertia { get; init; }

    /// <summary>Mass centre to front axle, m.</summary>
    public required double ToFront { get; init; }

    /// <summary>Mass centre to rear axle, m.</summary>
    public required double ToRear { get; init; }

    /// <summary>Mass centre to ball, m: to the rear axle and the overhang.</summary>
    public required double ToBall { get; init; }

    /// <summary>kg, above zero.</summary>
    public required double TrailerMass { get; init; }

    /// <summary>Yaw inertia of the trailer about its mass centre, kg·m², above zero.</summary>
    public required double TrailerInertia { get; init; }

    /// <summary>Ball to trailer mass centre, m.</summary>
    public required double TrailerMassCentre { get; init; }

    /// <summary>Ball to (equivalent) trailer axle, m, above zero.</summary>
    public required double TrailerAxle { get; init; }

    /// <summary>Cornering stiffness of the front axle, all tyres, N/rad, above zero.</summary>
    public required double FrontStiffness { get; init; }

    /// <summary>Of the rear axle, N/rad, above zero.</summary>
    public required double RearStiffness { get; init; }

    /// <summary>Of all trailer axles, N/rad, above zero.</summary>
    public required double TrailerStiffness { get; init; }

    /// <summary>Viscous damping of yaw at the ball, N·m·s/rad, zero or above.</summary>
    public double HitchDamping { get; init; }

    /// <summary>Front to rear axle, m.</summary>
    public double Wheelbase => ToFront + ToRear;

    /// <summary>Tongue mass by the trailer's geometry, kg.</summary>
    public double TongueMass => TrailerStatics.TongueMass(TrailerMass, TrailerMassCentre, TrailerAxle);

    /// <summary>Whether every number lies in the model's domain.</summary>
    public bool IsComputable => !double.IsNaN(
        Positive(VehicleMass) + Positive(VehicleInertia) + Positive(Wheelbase) + Finite(ToBall) + Positive(TrailerMass) + Positive(TrailerInertia)
        + Finite(TrailerMassCentre) + Positive(TrailerAxle) + Positive(FrontStiffness) + Positive(RearStiffness) + Positive(TrailerStiffness) + NotNegative(HitchDamping));
}

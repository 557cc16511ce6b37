using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// What holds a vehicle or a combination back on the road: rolling, air, grade. Drag area is held constant over the angle of the wind, and the air force
/// along the road is ½ ρ C_dA · (air speed along the road) · (air speed); a tailwind faster than the vehicle pushes it.
/// </summary>
/// <param name="Mass">kg, above zero.</param>
/// <param name="Rolling">Rolling coefficient.</param>
/// <param name="DragArea">C_d · A of the whole, m², zero or above.</param>
/// <param name="RotatingShare">Inertia of turning parts as a share of the mass; 0.03 for a car.</param>
public readonly record struct RoadLoad(double Mass, Rolling Rolling, double DragArea, double RotatingShare = 0.03)
{
    /// <summary>Force of the rolling tyres, N.</summary>
    public double RollingForce(double speed, double grade = 0) => Finite(Positive(Mass) * Constants.Gravity * Slope.Cosine(grade) * Rolling.At(speed));

    /// <summary>Force of the air along the road, N.</summary>
    /// <param name="speed">m/s.</param>
    /// <param name="density">Air density, kg/m³, above zero.</param>
    /// <param name="wind">Wind over the road.</param>
    public double AirForce(double speed, double density, Wind wind = default) =>
        Finite(0.5 * Positive(density) * NotNegative(DragArea) * (speed + wind.Head) * wind.AirSpeed(speed));

    /// <summary>Force of the grade, N; downhill negative.</summary>
    public double GradeForce(double grade) => Finite(Positive(Mass) * Constants.Gravity * Slope.Sine(grade));

    /// <summary>Force at the wheels that holds a speed, N; negative where the brakes or the drive must hold back.</summary>
    public double Force(double speed, double density, Wind wind = default, double grade = 0) =>
        RollingForce(speed, grade) + AirForce(speed, density, wind) + GradeForce(grade);

    /// <summary>Power at the wheels, W.</summary>
    public double Power(double speed, double density, Wind wind = default, double grade = 0) => Finite(speed * Force(speed, density, wind, grade));

    /// <summary>Mass that resists acceleration, kg.</summary>
    public double EffectiveMass => Finite(Positive(Mass) * (1 + NotNegative(RotatingShare)));

    /// <summary>Force at the wheels that accelerates the mass and its turning parts, N, beside <see cref="Force"/>.</summary>
    public double AccelerationForce(double acceleration) => Finite(EffectiveMass * acceleration);
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>The pull of a trailer at the ball.</summary>
public static class Pull
{
    /// <summary>Rearward pull on the tow vehicle, N: what speeds the trailer up, lifts it and overcomes its resistance.</summary>
    /// <param name="mass">Trailer mass, kg.</param>
    /// <param name="acceleration">m/s².</param>
    /// <param name="resistance">Rolling, air and brake force on the trailer, N.</param>
    /// <param name="grade">Rise over run.</param>
    public static double AtBall(double mass, double acceleration, double resistance, double grade = 0) =>
        Finite((mass * acceleration) + resistance + (mass * Constants.Gravity * Slope.Sine(grade)));
}

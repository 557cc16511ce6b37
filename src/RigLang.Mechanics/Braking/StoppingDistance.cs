using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>How far a vehicle or a rig needs to stop. Distances in m, speeds in m/s.</summary>
public static class StoppingDistance
{
    /// <summary>Reaction time of AASHTO's stopping sight distance, s. Source: Texas DOT, Roadway Design Manual 4.11.1.</summary>
    public const double SightReaction = 2.5;

    /// <summary>Deceleration of AASHTO's stopping sight distance, m/s² (11.2 ft/s²). Source: as above.</summary>
    public const double SightDeceleration = 3.4;

    /// <summary>Reaction and braking. NaN where the grade is steeper than the brakes.</summary>
    /// <param name="speed">Zero or above.</param>
    /// <param name="reaction">s, zero or above.</param>
    /// <param name="deceleration">On the level, m/s², above zero.</param>
    /// <param name="grade">Rise over run; downhill lengthens.</param>
    public static double Of(double speed, double reaction, double deceleration, double grade = 0)
    {
        double slowing = Positive(deceleration) + (Constants.Gravity * Slope.Sine(grade));
        return Finite((NotNegative(speed) * NotNegative(reaction)) + (speed * speed / (2 * Positive(slowing))));
    }

    /// <summary>Deceleration, m/s², that a limit of the form <c>0.1 V + c V²</c> (V in km/h) asks for besides its reaction: 1/(2 · 3.6² · c).</summary>
    /// <param name="coefficient">c, m/(km/h)²: 0.0060 of FMVSS 135 is 6.43 m/s².</param>
    public static double DecelerationOfLimit(double coefficient) => Finite(1 / (2 * 3.6 * 3.6 * Positive(coefficient)));

    /// <summary>Longest stop of a limit of the form <c>0.1 V + c V²</c> (V in km/h), m.</summary>
    /// <param name="speed">m/s, zero or above.</param>
    /// <param name="coefficient">c, m/(km/h)², above zero.</param>
    /// <param name="perSpeed">What each km/h adds for the brakes to build up, m/(km/h).</param>
    public static double Limit(double speed, double coefficient, double perSpeed = 0.10)
    {
        double kilometresPerHour = NotNegative(speed) * 3.6;
        return Finite((NotNegative(perSpeed) * kilometresPerHour) + (Positive(coefficient) * kilometresPerHour * kilometresPerHour));
    }

    /// <summary>Longest cold stop that FMVSS 135 allows a light vehicle, m: 0.10 V + 0.0060 V², V in km/h. Source: 49 CFR 571.135.</summary>
    public static double LightVehicleLimit(double speed) => Limit(speed, 0.0060);
}

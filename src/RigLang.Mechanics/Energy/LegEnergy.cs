namespace RigLang.Mechanics;

/// <summary>What a stretch of driving took from the battery, and where it went. Energies in J.</summary>
/// <param name="Battery">Out of the battery in all; negative if more came back than went out.</param>
/// <param name="Traction">Work of the drive at the wheels.</param>
/// <param name="Recovered">Into the battery from regeneration.</param>
/// <param name="Brakes">Shed at the wheels by friction brakes because the battery could not take it, or an overrun trailer braked before it was asked.</param>
/// <param name="Braking">Work of the road on the wheels that had to be held back (regeneration and friction brakes together).</param>
/// <param name="Auxiliary">Heating, cooling, electronics.</param>
/// <param name="Distance">m.</param>
/// <param name="Time">s.</param>
/// <param name="Overrun">Of <paramref name="Brakes"/>, what an overrun trailer's own took.</param>
/// <param name="Refused">What the battery would have taken besides, had it not been so full.</param>
public readonly record struct LegEnergy(
    double Battery, double Traction, double Recovered, double Brakes, double Braking, double Auxiliary, double Distance, double Time, double Overrun = 0, double Refused = 0)
{
    /// <summary>Battery energy over distance, J/m; 1 Wh/km is 3.6 J/m.</summary>
    public double PerDistance => Distance > 0 ? Battery / Distance : double.NaN;

    public static LegEnergy operator +(LegEnergy one, LegEnergy other) => new(
        one.Battery + other.Battery, one.Traction + other.Traction, one.Recovered + other.Recovered, one.Brakes + other.Brakes,
        one.Braking + other.Braking, one.Auxiliary + other.Auxiliary, one.Distance + other.Distance, one.Time + other.Time,
        one.Overrun + other.Overrun, one.Refused + other.Refused);

    public static LegEnergy Add(LegEnergy one, LegEnergy other) => one + other;
}

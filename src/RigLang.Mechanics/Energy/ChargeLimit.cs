using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// What a battery takes while driving, by its charge: on a long descent no more than a post could give it at that charge, and nothing when it is full. What it
/// refuses goes to the friction brakes. Exact within a stretch: the charge rises along the curve.
/// </summary>
/// <param name="Curve">Power that the battery takes over its charge.</param>
/// <param name="Capacity">Between empty and full, J, above zero.</param>
public sealed record ChargeLimit(ChargingCurve Curve, double Capacity)
{
    /// <summary>A stretch begun at a charge: its energy as the battery lets it be, and the charge at its end.</summary>
    /// <param name="wanted">The stretch as the drive alone would have it.</param>
    /// <param name="share">Wheel to battery, 0 to 1.</param>
    /// <param name="charge">At the start; below zero is what was short, at one or above nothing is taken.</param>
    public (LegEnergy Energy, double Charge) Over(LegEnergy wanted, double share, double charge)
    {
        double net = -wanted.Battery;
        if (!(net > 0))
            return (wanted, Finite(charge + (net / Positive(Capacity))));
        double from = Math.Clamp(charge, 0, 1), after = AfterTaking(from, net, wanted.Time);
        double refused = Math.Max(0, net - ((after - from) * Positive(Capacity)));
        // Rounding is no refusal.
        if (refused <= 1e-9 * net)
            refused = 0;
        var energy = wanted with
        {
            Battery = wanted.Battery + refused, Recovered = wanted.Recovered - refused, Refused = wanted.Refused + refused,
            Brakes = refused == 0 ? wanted.Brakes : wanted.Brakes + (refused / Positive(Within(share, 0, 1))),
        };
        return (energy, Finite(charge + after - from));
    }

    private double AfterTaking(double from, double net, double time)
    {
        double whole = from + (net / Positive(Capacity)), power = net / Positive(time);
        return whole <= 1 && Curve.LeastBetween(from, whole) >= power ? whole : Curve.LimitedTo(power).ChargedAfter(Capacity, from, time);
    }
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>How sure the numbers of a trip are; standard deviations.</summary>
/// <param name="StartCharge">Of the charge at the start, 0 to 1.</param>
/// <param name="CapacityShare">Of the battery's energy, as a share of it.</param>
/// <param name="CommonShare">Of the consumption of all legs together (mass, drag area, wind), as a share.</param>
/// <param name="LegShare">Of each leg's consumption by itself (traffic, gusts), as a share.</param>
public readonly record struct TripDoubt(double StartCharge, double CapacityShare, double CommonShare, double LegShare);

/// <summary>
/// State of charge on arrival and its doubt. What is common to all legs does not average out: taken as independent from leg to leg it would look much surer
/// than it is.
/// </summary>
/// <param name="Mean">State of charge, may be below 0.</param>
/// <param name="Deviation">Standard deviation.</param>
public readonly record struct ArrivalCharge(double Mean, double Deviation)
{
    /// <param name="start">State of charge at the start.</param>
    /// <param name="capacity">J, above zero.</param>
    /// <param name="legs">Energy of each leg, J.</param>
    /// <param name="doubt">How sure the numbers are.</param>
    public static ArrivalCharge After(double start, double capacity, ReadOnlySpan<double> legs, TripDoubt doubt)
    {
        double used = 0, squares = 0;
        foreach (double leg in legs)
        {
            double share = leg / Positive(capacity);
            used += share;
            squares += share * share;
        }

        double common = (doubt.CommonShare * doubt.CommonShare) + (doubt.CapacityShare * doubt.CapacityShare);
        double variance = (doubt.StartCharge * doubt.StartCharge) + (used * used * common) + (squares * doubt.LegShare * doubt.LegShare);
        return new ArrivalCharge(Finite(start - used), Finite(Math.Sqrt(variance)));
    }

    /// <summary>Chance of arriving with less than a charge, 0 to 1.</summary>
    public double ChanceBelow(double charge) => Normal.ChanceBelow(Mean, Deviation, charge);

    /// <summary>The charge that is missed with a given chance; 0.05 gives the charge reached 19 times out of 20.</summary>
    public double Quantile(double chance) =>
        Finite(Mean + (Deviation * Normal.Quantile(chance)));
}

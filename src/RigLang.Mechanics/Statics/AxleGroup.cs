using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>One axle of a trailer with its own springs.</summary>
/// <param name="Position">Behind the coupling, m.</param>
/// <param name="Rate">Spring rate at the wheels, both together, N/m.</param>
public readonly record struct SprungAxle(double Position, double Rate);

/// <summary>How a trailer's axles divide the load, and what remains on the coupling.</summary>
/// <param name="Loads">Load of each axle, N, in the order given.</param>
/// <param name="Ball">Net downward force at the coupling, N.</param>
public sealed record AxleGroupLoads(IReadOnlyList<double> Loads, double Ball);

/// <summary>
/// Axle groups. Equalised axles (leaf springs joined by rockers) share the load equally whatever the trailer's attitude. Independent axles
/// (rubber or torsion suspension) carry what their own travel makes of it, so a nose-high trailer moves load to its rear axle.
/// </summary>
public static class AxleGroup
{
    /// <summary>Coupling to equivalent axle of an equalised group: the mean position, m.</summary>
    public static double EquivalentOfEqualised(ReadOnlySpan<double> positions)
    {
        double sum = 0;
        foreach (double position in positions)
            sum += position;
        return Finite(sum / positions.Length);
    }

    /// <summary>
    /// Coupling to equivalent axle of an independent group, m: Σ k l² / Σ k l. A single axle there would give the same tongue mass
    /// and the same answer to a couple at the hitch.
    /// </summary>
    public static double EquivalentOfIndependent(ReadOnlySpan<SprungAxle> axles)
    {
        double first = 0, second = 0;
        foreach (SprungAxle axle in axles)
        {
            first += Positive(axle.Rate) * Positive(axle.Position);
            second += axle.Rate * axle.Position * axle.Position;
        }

        return Finite(second / first);
    }

    /// <summary>Loads of an equalised group.</summary>
    /// <param name="weight">Trailer weight, N.</param>
    /// <param name="massCentre">Behind the coupling, m.</param>
    /// <param name="positions">Axles behind the coupling, m.</param>
    /// <param name="couple">Couple of spring bars, N·m; zero without.</param>
    public static AxleGroupLoads Equalised(double weight, double massCentre, ReadOnlySpan<double> positions, double couple = 0)
    {
        double group = ((weight * massCentre) + couple) / Positive(EquivalentOfEqualised(positions));
        var loads = new double[positions.Length];
        Array.Fill(loads, Finite(group / positions.Length));
        return new AxleGroupLoads(loads, Finite(weight - group));
    }

    /// <summary>Loads of independent axles on a rigid frame that turns about the coupling.</summary>
    /// <param name="weight">Trailer weight, N.</param>
    /// <param name="massCentre">Behind the coupling, m.</param>
    /// <param name="axles">Positions above zero and rates above zero.</param>
    /// <param name="couple">Couple of spring bars, N·m.</param>
    /// <param name="ballRise">Coupling above the height at which the unloaded frame is level, m; positive is nose-high.</param>
    /// <remarks>An axle that would have to pull is off the road: it carries nothing and the others are solved again.</remarks>
    public static AxleGroupLoads Independent(double weight, double massCentre, ReadOnlySpan<SprungAxle> axles, double couple = 0, double ballRise = 0)
    {
        var loads = new double[axles.Length];
        var lifted = new bool[axles.Length];
        for (int round = 0; round <= axles.Length; round++)
        {
            double first = 0, second = 0;
            for (int i = 0; i < axles.Length; i++)
            {
                double rate = lifted[i] ? 0 : Positive(axles[i].Rate), position = Positive(axles[i].Position);
                first += rate * position;
                second += rate * position * position;
            }

            double pitch = ((weight * massCentre) + couple + (ballRise * first)) / second;
            bool pulls = false;
            for (int i = 0; i < axles.Length; i++)
            {
                loads[i] = lifted[i] ? 0 : Finite(axles[i].Rate * ((axles[i].Position * pitch) - ballRise));
                if (loads[i] < 0)
                    pulls = lifted[i] = true;
            }

            if (!pulls)
                break;
        }

        double group = 0;
        foreach (double load in loads)
            group += load;
        return new AxleGroupLoads(loads, axles.Length == 0 ? double.NaN : Finite(weight - group));
    }

    /// <summary>
    /// Loads, N, of independent axles whose frame stood level under a first load: each spring was as far in as the others, so each axle carried its
    /// share of the rates. What comes on top turns the frame about the coupling.
    /// </summary>
    /// <param name="levelLoad">On all axles together when the frame was level, N.</param>
    /// <param name="addedMoment">Of what came on top, about the coupling, a couple of spring bars included, N·m.</param>
    /// <param name="axles">Positions above zero and rates above zero.</param>
    /// <param name="ballRise">Coupling above the height at which the frame was level, m; positive is nose-high.</param>
    public static IReadOnlyList<double> IndependentFromLevel(double levelLoad, double addedMoment, ReadOnlySpan<SprungAxle> axles, double ballRise = 0)
    {
        double rates = 0, first = 0;
        foreach (SprungAxle axle in axles)
        {
            rates += Positive(axle.Rate);
            first += axle.Rate * Positive(axle.Position);
        }

        double moment = (levelLoad * first / rates) + addedMoment;
        return Independent(1, moment, axles, 0, ballRise - (levelLoad / rates)).Loads;
    }
}

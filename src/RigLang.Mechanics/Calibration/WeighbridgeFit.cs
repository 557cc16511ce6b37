using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>State of the rig on the scale.</summary>
public enum WeighingState
{
    /// <summary>Vehicle and trailer apart.</summary>
    Apart,

    /// <summary>Coupled, no couple from spring bars.</summary>
    Slack,

    /// <summary>Coupled, bars set.</summary>
    Set,
}

/// <summary>What stood on the scale; several together stood on it at once.</summary>
[Flags]
public enum WeighedParts
{
    None = 0,
    Front = 1,
    Rear = 2,

    /// <summary>The trailer's axle group.</summary>
    TrailerAxles = 4,

    /// <summary>The trailer's coupling on a scale of its own; only apart.</summary>
    Tongue = 8,
}

/// <summary>One reading of a scale.</summary>
/// <param name="State">State of the rig.</param>
/// <param name="Parts">What stood on the scale.</param>
/// <param name="Load">N.</param>
/// <param name="Error">Standard deviation, N, above zero.</param>
public readonly record struct ScaleReading(WeighingState State, WeighedParts Parts, double Load, double Error);

/// <summary>All readings of a weighing together. Members are NaN where the readings cannot tell them. N and N·m.</summary>
/// <param name="SoloFront">Front axle without trailer.</param>
/// <param name="SoloRear">Rear axle without trailer.</param>
/// <param name="TrailerWeight">Whole trailer.</param>
/// <param name="Tongue">Its tongue with slack bars.</param>
/// <param name="Couple">Couple of the set bars.</param>
/// <param name="Fit">The fit behind them, with errors in this order and the residual of each reading: large ones show a slip of the pen or of the rig.</param>
public sealed record WeighbridgeFit(double SoloFront, double SoloRear, double TrailerWeight, double Tongue, double Couple, FitResult Fit)
{
    /// <summary>Least squares over any set of readings, since every load is linear in the five unknowns.</summary>
    /// <param name="readings">At least one; vehicle parts and trailer parts may mix.</param>
    /// <param name="wheelbase">m, above zero.</param>
    /// <param name="overhang">Rear axle to ball, m.</param>
    /// <param name="axle">Coupling to (equivalent) trailer axle, m, above zero.</param>
    public static WeighbridgeFit Of(ReadOnlySpan<ScaleReading> readings, double wheelbase, double overhang, double axle)
    {
        double l = Positive(wheelbase), lt = Positive(axle), e = Finite(overhang);
        double[] design = new double[readings.Length * 5], loads = new double[readings.Length], errors = new double[readings.Length];
        for (int i = 0; i < readings.Length; i++)
        {
            ScaleReading reading = readings[i];
            // What a state does not contain does not need the rig's lengths either.
            double Coupled(double factor) => reading.State == WeighingState.Apart ? 0 : factor;
            double Set(double factor) => reading.State == WeighingState.Set ? factor : 0;
            Span<double> row = design.AsSpan(i * 5, 5);
            if (reading.Parts.HasFlag(WeighedParts.Front))
                Add(row, 1, 0, 0, Coupled(-e / l), Set((lt + e) / (l * lt)));
            if (reading.Parts.HasFlag(WeighedParts.Rear))
                Add(row, 0, 1, 0, Coupled((l + e) / l), Set(-(lt + l + e) / (l * lt)));
            if (reading.Parts.HasFlag(WeighedParts.TrailerAxles))
                Add(row, 0, 0, 1, -1, Set(1 / lt));
            if (reading.Parts.HasFlag(WeighedParts.Tongue))
                Add(row, 0, 0, 0, 1, 0);
            (loads[i], errors[i]) = (reading.Load, reading.Error);
        }

        FitResult fit = LeastSquares.Fit(design, loads, errors, 5);
        return new WeighbridgeFit(fit.Values[0], fit.Values[1], fit.Values[2], fit.Values[3], fit.Values[4], fit);
    }

    /// <summary>Standard deviation of the mass centre behind the coupling, m, the shared doubt of weight and tongue counted.</summary>
    /// <param name="axle">Coupling to (equivalent) trailer axle, m, above zero.</param>
    public double MassCentreError(double axle)
    {
        double perWeight = Positive(axle) * Tongue / (TrailerWeight * TrailerWeight), perTongue = -axle / TrailerWeight;
        return Finite(Math.Sqrt(
            (perWeight * perWeight * Fit.Covariance[12]) + (2 * perWeight * perTongue * Fit.Covariance[13]) + (perTongue * perTongue * Fit.Covariance[18])));
    }

    /// <summary>
    /// Index of the one reading that is out of line, and how much more it says than the others make of it, N: all together scatter by more than twice what their errors explain, and leaving out this one, and no
    /// other, brings the rest into agreement. Null and NaN where all agree, where no single one is to blame, or where too few are left to tell.
    /// </summary>
    /// <param name="readings">As for <see cref="Of"/>.</param>
    /// <param name="wheelbase">m, above zero.</param>
    /// <param name="overhang">Rear axle to ball, m.</param>
    /// <param name="axle">Coupling to (equivalent) trailer axle, m, above zero.</param>
    public static (int? Index, double Excess) OutOfLine(ReadOnlySpan<ScaleReading> readings, double wheelbase, double overhang, double axle)
    {
        if (!(Of(readings, wheelbase, overhang, axle).Fit.Spread > Disagreeing))
            return (null, double.NaN);
        int? found = null;
        for (int i = 0; i < readings.Length; i++)
        {
            ScaleReading[] rest = [.. readings[..i], .. readings[(i + 1)..]];
            double spread = Of(rest, wheelbase, overhang, axle).Fit.Spread;
            // Without excess nothing is told by the others; two that each would do are both as likely.
            if (double.IsNaN(spread) || (spread <= Agreeing && found is not null))
                return (null, double.NaN);
            if (spread <= Agreeing)
                found = i;
        }

        if (found is not { } index)
            return (null, double.NaN);
        // A reading with an error past all measure follows the others: what it is off then is its own.
        ScaleReading[] relaxed = [.. readings];
        relaxed[index] = relaxed[index] with { Error = relaxed[index].Error * 1e4 };
        return (index, Of(relaxed, wheelbase, overhang, axle).Fit.Residuals[index]);
    }

    /// <summary>Spreads beyond which readings do not belong together, and up to which they do; 1 is what is to be expected.</summary>
    private const double Disagreeing = 2, Agreeing = 1.5;

    private static void Add(Span<double> row, double front, double rear, double trailer, double tongue, double couple)
    {
        row[0] += front;
        row[1] += rear;
        row[2] += trailer;
        row[3] += tongue;
        row[4] += couple;
    }
}

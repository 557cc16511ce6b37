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

    private static void Add(Span<double> row, double front, double rear, double trailer, double tongue, double couple)
    {
        row[0] += front;
        row[1] += rear;
        row[2] += trailer;
        row[3] += tongue;
        row[4] += couple;
    }
}

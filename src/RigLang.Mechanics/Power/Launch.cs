using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Which axle is driven.</summary>
public enum DrivenAxle
{
    Front,
    Rear,
    All,
}

/// <summary>Starting on a hill, by grip.</summary>
/// <param name="Loads">Axle loads of the tow vehicle on the hill, N.</param>
/// <param name="Need">Force that moves the rig off, N.</param>
/// <param name="Available">Force that the driven axle holds, N.</param>
public readonly record struct LaunchResult(AxleLoads Loads, double Need, double Available)
{
    /// <summary>Part of the grip that the start takes; above 1 the wheels spin.</summary>
    public double Use => Need > 0 && Available <= 0 ? double.NaN : Finite(Need / Available);
}

/// <summary>A rig that starts on a hill.</summary>
public sealed record Launch
{
    /// <summary>kg, above zero.</summary>
    public required double VehicleMass { get; init; }

    /// <summary>m, above zero.</summary>
    public required double Wheelbase { get; init; }

    /// <summary>Mass centre behind the front axle, m.</summary>
    public required double MassCentre { get; init; }

    /// <summary>m.</summary>
    public required double MassCentreHeight { get; init; }

    /// <summary>Rear axle to ball, m.</summary>
    public required double Overhang { get; init; }

    /// <summary>m.</summary>
    public required double BallHeight { get; init; }

    /// <summary>kg; zero without a trailer.</summary>
    public required double TrailerMass { get; init; }

    /// <summary>Net mass on the ball, kg; under spring bars less than the trailer's tongue mass.</summary>
    public required double BallMass { get; init; }

    /// <summary>Couple of spring bars, N·m.</summary>
    public double Couple { get; init; }

    /// <summary>Rolling coefficient of all wheels.</summary>
    public required double Rolling { get; init; }

    /// <summary>
    /// Friction of the driven tyres: 0.85 new tyre dry, 0.65 wet, 0.55 heavy rain, 0.50 puddles, 0.10 ice (EU Joint Research Centre defaults).
    /// </summary>
    public required double Friction { get; init; }

    /// <summary>The driven axle.</summary>
    public required DrivenAxle Drive { get; init; }

    /// <summary>The start on a grade (rise over run); downhill is negative.</summary>
    public LaunchResult On(double grade)
    {
        double sine = Slope.Sine(grade), cosine = Slope.Cosine(grade), g = Constants.Gravity;
        double pull = (TrailerMass * g * sine) + (NotNegative(Rolling) * (TrailerMass - BallMass) * g * cosine);
        AxleLoads loads = VehicleStatics.Moving(new VehicleBalance
        {
            Mass = VehicleMass, Wheelbase = Wheelbase, MassCentre = MassCentre, MassCentreHeight = MassCentreHeight, Grade = grade,
            Pull = pull, BallHeight = BallHeight, BallForce = BallMass * g * cosine, Overhang = Overhang, Couple = Couple,
        });
        double need = (VehicleMass * g * sine) + pull + (Rolling * loads.Total);
        double driven = Drive switch { DrivenAxle.Front => loads.Front, DrivenAxle.Rear => loads.Rear, DrivenAxle.All => loads.Total, _ => double.NaN };
        return new LaunchResult(loads, Finite(need), Finite(Math.Max(0, driven) * NotNegative(Friction)));
    }

    /// <summary>
    /// Steepest grade that the rig starts on, rise over run: by grip, and by the force of the drive at standstill (N; infinity to look at grip alone). At
    /// most 1;
    /// 0 if it does not start on the level.
    /// </summary>
    public double SteepestGrade(double driveForce = double.PositiveInfinity)
    {
        double Surplus(double grade)
        {
            LaunchResult start = On(grade);
            return Math.Min(start.Available, driveForce) - start.Need;
        }

        double level = Surplus(0);
        if (double.IsNaN(level))
            return double.NaN;
        if (level <= 0)
            return 0;
        SearchResult edge = Root.Find(Surplus, 0, 1, steps: 40);
        return edge.Outcome == SearchOutcome.None ? 1 : edge.First;
    }
}

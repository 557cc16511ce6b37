namespace RigLang.Mechanics;

/// <summary>Everything that presses on and pulls at a tow vehicle under way. Heights are above the road, m.</summary>
public readonly record struct VehicleBalance
{
    public VehicleBalance() { }

    /// <summary>kg, above zero.</summary>
    public required double Mass { get; init; }

    /// <summary>m, above zero.</summary>
    public required double Wheelbase { get; init; }

    /// <summary>Mass centre behind the front axle, m.</summary>
    public required double MassCentre { get; init; }

    /// <summary>m.</summary>
    public required double MassCentreHeight { get; init; }

    /// <summary>Rise over run, uphill positive.</summary>
    public double Grade { get; init; } = 0;

    /// <summary>m/s², forward positive.</summary>
    public double Acceleration { get; init; } = 0;

    /// <summary>N, rearward positive.</summary>
    public double AirForce { get; init; } = 0;

    /// <summary>m.</summary>
    public double AirForceHeight { get; init; } = 0;

    /// <summary>Rearward pull of the trailer at the ball, N; a push is negative.</summary>
    public double Pull { get; init; } = 0;

    /// <summary>m.</summary>
    public double BallHeight { get; init; } = 0;

    /// <summary>Downward force at the ball, N.</summary>
    public double BallForce { get; init; } = 0;

    /// <summary>Couple of spring bars, N·m, positive when it loads the front axle.</summary>
    public double Couple { get; init; } = 0;

    /// <summary>Rear axle to ball, m; negative for a coupling ahead of the rear axle.</summary>
    public double Overhang { get; init; } = 0;
}

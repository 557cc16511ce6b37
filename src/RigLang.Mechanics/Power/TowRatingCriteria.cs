namespace RigLang.Mechanics;

/// <summary>
/// What SAE J2807 asks of a tow rating, as recalled: information, never a limit. All values from memory; the standard itself was not at hand.
/// </summary>
public static class TowRatingCriteria
{
    private const double MilesPerHour = 1609.344 / 3600;

    /// <summary>Grade to start on, forward and in reverse, rise over run.</summary>
    public const double LaunchGrade = 0.12;

    /// <summary>Share of the trailer's mass on the tongue in the tests, conventional hitch.</summary>
    public const double TongueShare = 0.10;

    /// <summary>Least damping ratio of sway.</summary>
    public const double SwayDamping = 0.10;

    /// <summary>Speed of the sway test, m/s: 100 km/h.</summary>
    public const double SwaySpeed = 100 / 3.6;

    /// <summary>Rise and length of the highway climb, m; up to 7 %, with at least 37.8 °C outside.</summary>
    public const double ClimbRise = 3000 * 0.3048, ClimbLength = 11.4 * 1609.344;

    /// <summary>Speed to hold on that climb, m/s.</summary>
    public static double ClimbSpeed(bool dualRearWheels) => (dualRearWheels ? 35 : 40) * MilesPerHour;

    /// <summary>Accelerations on the level: from and to (m/s), and the longest time (s).</summary>
    public static IReadOnlyList<(double From, double To, double Time)> Accelerations(bool dualRearWheels) =>
    [
        (0, 30 * MilesPerHour, dualRearWheels ? 14 : 12),
        (0, 60 * MilesPerHour, dualRearWheels ? 35 : 30),
        (40 * MilesPerHour, 60 * MilesPerHour, dualRearWheels ? 21 : 18),
    ];
}

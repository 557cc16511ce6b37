namespace RigLang.Mechanics;

/// <summary>Ball sizes. A 50 mm and a 2 in (50.8 mm) ball are not interchangeable, so sizes are compared, not classed.</summary>
public static class CouplingBall
{
    /// <summary>Diameter of the European A50 ball, m (ISO 1103 and UN R55, value from memory).</summary>
    public const double A50 = 0.050;

    /// <summary>The A50 ball's centre stands between these heights above the road, laden, m (value from memory).</summary>
    public const double A50LowestCentre = 0.350, A50HighestCentre = 0.420;

    /// <summary>Whether ball and coupling have the same nominal size (both m). False if either is unknown.</summary>
    public static bool Fits(double ball, double coupling) => Math.Abs(ball - coupling) < 0.0002;
}

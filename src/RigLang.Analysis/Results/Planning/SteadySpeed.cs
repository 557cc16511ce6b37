using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;

namespace RigLang.Analysis.Results.Planning;

/// <summary>How fast a swing still dies away well.</summary>
internal static class SteadySpeed
{
    /// <summary>Below this a damping is poor (common practice, value from memory); a practice that limits <c>damping</c> says its own.</summary>
    public const double Least = 0.05;

    private const double Lowest = 30 / 3.6, Highest = 200 / 3.6;

    /// <summary>Highest speed, m/s, at which a swing has the damping that the rig's practice asks for; doesn't apply where that holds up to 200 km/h, or without a trailer.</summary>
    public static Computation<RigStudy, double> Of { get; } = new("steady speed", (read, rig) =>
    {
        if (!rig.HasTrailer)
        {
            return read.NotApplicable();
        }

        var least = LeastOf(rig);
        // All reads are those of any one speed.
        SwingModel.Damping(read, rig, Lowest);
        if (read.HasMissing)
        {
            return double.NaN;
        }

        if (SwingModel.Damping(read, rig, Lowest) < least)
        {
            return Lowest;
        }

        return Root.Find(speed => SwingModel.Damping(read, rig, speed), Lowest, Highest, least, 34).Places is [var first, ..] ? first : read.NotApplicable();
    });

    /// <summary>The least damping that the rig's practice wants.</summary>
    public static double LeastOf(RigStudy rig) => rig.Practice.Limits.Where(limit => limit.Result == StabilityResults.Damping && limit.Low is not null).Select(limit => limit.Low!.Value).DefaultIfEmpty(Least).Max();
}

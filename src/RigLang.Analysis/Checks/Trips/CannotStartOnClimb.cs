using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The rig can't start again on a climb of the trip.</summary>
public sealed class CannotStartOnClimb : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL736",
        Slug = "cannot-start-on-climb",
        Severity = Severity.Warning,
        Summary = "A leg has a climb on which the rig can't start again once it stands.",
        Why = "A queue, a lorry or a hairpin may stop it there; wheels that spin or a clutch that burns then leave it in the way, and rolling back with a trailer folds it.",
        Bad = RigExample.Pulling("25 %"),
        Good = RigExample.Pulling("6 %"),
        Fix = "Another way round, less on the trailer, more load on the driven axle, low range where there is one.",
        Source = "friction × load of the driven axle, or torque from rest, against grade and rolling",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        var grip = PowerResults.LaunchGradeGrip.Compute(trip.Rig)!;
        var pull = PowerResults.LaunchGradePull.Compute(trip.Rig)!;
        // What isn't known sets no limit; the other one still does.
        var binding = !pull.IsComputed || (grip.IsComputed && grip.Value < pull.Value) ? grip : pull;
        if (!binding.IsComputed)
        {
            yield break;
        }

        foreach (var leg in trip.Legs)
        {
            if (LegClimbing.Grade.Compute(leg) is { IsComputed: true } climb && climb.Value > binding.Value)
            {
                yield return Report(
                    trip, PlaceOf(leg),
                    $"The leg to {leg.PlaceName} climbs {Grade(climb.Value)}, and the rig starts on up to {Grade(binding.Value)} by {(ReferenceEquals(binding, grip) ? "grip" : "pull")}{(binding.IsEstimated ? " (estimated)" : "")}: if it must stop there it can't go on. Go another way, or tow less there.");
            }
        }
    }

    private static string Grade(double grade) => QuantityWriter.Write(grade, QuantityKinds.Slope, DisplaySystem.Metric);
}

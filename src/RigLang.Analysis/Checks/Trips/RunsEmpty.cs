using System.Collections.Immutable;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The battery or the tank is empty on a leg.</summary>
public sealed class RunsEmpty : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL702",
        Slug = "runs-empty",
        Severity = Severity.Error,
        Summary = "The battery or the tank is empty before a leg ends.",
        Why = "The trip ends beside the road. All that comes behind it in the plan is reckoned as if the next stop had been reached empty.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 30 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Leave with more, drive slower, or stop on the way.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Reaching;

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var along = trip.Compute(Charge.Along, leg);
            var taken = trip.Compute(Charge.Taken, leg);
            if (along.Missing is not null || !along.Applies || !Limits.FallsBelow(along.Value.Lowest, 0) || !(trip.Compute(Charge.AtStart, leg).Value >= 0) || LegOutOfRange.Is(leg))
            {
                continue;
            }

            var (charge, what) = (along.Value, Drives.Engine(trip.Rig) is null ? "battery" : "tank");
            var where = double.IsNaN(charge.EmptyAt)
                ? $"before {leg.PlaceName}"
                : $"{Distance(trip, charge.EmptyAt)} into the leg to {leg.PlaceName}";
            yield return Report(
                trip, PlaceOf(leg),
                $"The {what} is empty {where}{Mark(along)}; the leg takes {Percent(taken.Value)} of it, and {Percent(-charge.Lowest)} is lacking. {Advice(trip, leg, -charge.Lowest)}") with { About = leg.Leg.Key };
        }
    }

    public override string? Figure(Study study, Finding finding) => LeftAt(study, finding);

    private static string Advice(TripStudy trip, LegSubject leg, double lacking)
    {
        var needed = trip.Compute(Charge.AtStart, leg).Value + lacking;
        return needed <= 1
            ? $"Leave {leg.Before?.PlaceName ?? trip.StartName} with more than {WholePercent(needed)}, or drive slower."
            : "Stop on the way, or drive slower.";
    }
}

using System.Collections.Immutable;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A place is reached with less than the reserve.</summary>
public sealed class ReserveNotMet : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL701",
        Slug = "reserve-not-met",
        Severity = Severity.Warning,
        Summary = "A place is reached with less than the reserve.",
        Why = "The reserve is for what no plan knows: a closed charger, a detour, a headwind all day.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 60 %
                reserve 20 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                reserve 20 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Leave the place before with more, drive slower, or stop on the way.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Reaching;

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var room = trip.Compute(LegResults.ReserveRoom, leg);
            var left = trip.Compute(LegResults.EnergyLeft, leg);
            // An empty battery or tank has a finding of its own.
            if (!room.IsComputed || Judgeable.IsUnsettled(trip.Parts.Trip) || !Limits.FallsBelow(room.Value, 0) || !(left.Value >= 0))
            {
                continue;
            }

            var reserve = trip.Block.Find(TripFacts.Reserve)!;
            yield return Report(
                trip, PlaceOf(leg),
                $"{leg.PlaceName} is reached with {Percent(left.Value)} left{Mark(left)}, {Percent(-room.Value)} short of the reserve of {reserve.PlaceOf("value").Text}. {Advice(trip, leg, -room.Value)}") with
            {
                About = leg.Leg.Key,
                Related = [new Related(reserve.Place, "the reserve")],
            };
        }
    }

    public override string? Figure(Study study, Finding finding) => LeftAt(study, finding);

    private static string Advice(TripStudy trip, LegSubject leg, double lacking)
    {
        var needed = trip.Compute(Charge.AtStart, leg).Value + lacking;
        var from = leg.Before?.PlaceName ?? trip.StartName;
        return needed <= 1 ? $"Leave {from} with {WholePercent(needed)}, or drive slower." : "Even full it doesn't reach: drive slower, or stop on the way.";
    }
}

using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The reserve is kept by the values as written, but what is known isn't sure enough to say so.</summary>
public sealed class ReserveInDoubt : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL745",
        Slug = "reserve-in-doubt",
        Severity = Severity.Warning,
        Summary = "The reserve is kept by the values as written, but with what is uncertain of them it may well not be.",
        Why = "What is left on arrival is as sure as drag, rolling and battery are known, and an error in one of them is the same on every leg. Where the chance of missing the reserve is more than one in twenty, the plan needs more room, or better figures.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 70 % ± 20 %
                reserve 20 %
                leg coast
                    distance 160 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 % ± 1 %
                reserve 20 %
                leg coast
                    distance 100 km
                    climb 0 m
            """),
        Fix = "Leave with more, drive slower, or find out what is most in doubt.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var leg in trip.Legs)
        {
            var room = trip.Compute(LegResults.ReserveRoom, leg);
            if (!room.IsComputed || Limits.FallsBelow(room.Value, 0) || DoubtTable.Of(LegResults.ReserveRoom, leg) is not { HalfWidth: > 0, Parts: [var most, ..] } doubt
                || doubt.ChanceBelow(0) is not (> ChanceWords.WorthSaying and var chance))
            {
                continue;
            }

            var reserve = trip.Block.Find(TripFacts.Reserve)!;
            var left = trip.Compute(LegResults.EnergyLeft, leg);
            yield return Report(
                trip, PlaceOf(leg),
                $"{leg.PlaceName} is reached with {WholePercent(left.Value)} ± {WholePercent(doubt.HalfWidth)} left; the chance that this is less than the reserve of "
                + $"{reserve.PlaceOf("value").Text} is {ChanceWords.Percent(chance)}. Most of the doubt is {most.Fact.Fact.Words}: find it out better, leave with more, or drive slower.") with
            {
                Related = [new Related(reserve.Place, "the reserve")],
            };
        }
    }
}

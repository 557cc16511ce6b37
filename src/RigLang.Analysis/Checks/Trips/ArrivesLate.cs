using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>The trip ends later than wished.</summary>
public sealed class ArrivesLate : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL706",
        Slug = "arrives-late",
        Severity = Severity.Warning,
        Summary = "The last place is reached later than `arrive-by` wishes.",
        Why = "A ferry, a camp that closes its gate, daylight.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                arrive-by 2026-10-03 09:00 +10:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                arrive-by 2026-10-03 11:00 +10:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
            """),
        Fix = "Leave earlier, stop less, or change the wish.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (trip.Legs is not [.., var last] || trip.Block.Find(TripFacts.ArriveBy) is not { Value: MomentValue { Moment: var wish } } line
            || Clock.Seconds(last, wish) is not { } wished || trip.Compute(LegResults.Arrival, last) is not { IsComputed: true } arrival || !Limits.Exceeds(arrival.Value, wished))
        {
            yield break;
        }

        yield return Report(
            trip, line.Place,
            $"{last.PlaceName} is reached {LegResults.Arrival.Write(last, arrival.Value, DisplaySystem.Metric)}{Mark(arrival)}, {Duration(arrival.Value - wished)} after the wish. Leave earlier, stop less, or change the wish.") with
        {
            Related = [new Related(PlaceOf(last), "the last leg")],
        };
    }
}

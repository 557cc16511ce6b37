using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>A result of a trip, a leg or a stop is outside a limit of its rig's practice.</summary>
public sealed class OutsidePracticeOnTrip : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new OutsidePractice().Declaration;

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        var subjects = trip.Legs.SelectMany(leg => leg.Stop is { } stop ? [leg, stop] : new ISubject[] { leg }).Prepend(trip);
        return MissedLimit.Of(trip.Rig, subjects)
            .Select(missed => Report(trip, PlaceOf(trip, missed.Node.Subject), OutsidePractice.Message(missed)) with { Related = [.. missed.Related] });
    }

    private static Place PlaceOf(TripStudy trip, ISubject subject) => subject switch
    {
        LegSubject leg => PlaceOf(leg),
        StopSubject stop => stop.Block.Opener!.Place,
        _ => trip.Parts.Trip.Own.NamePlace,
    };
}

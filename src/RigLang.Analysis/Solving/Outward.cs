using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;

namespace RigLang.Analysis.Solving;

/// <summary>Whose results a line means: of the block that holds it, then outward.</summary>
internal static class Outward
{
    /// <summary>The blocks of a study in which questions may stand, each with what a result named there can be a result of, the nearest first.</summary>
    public static IEnumerable<(Block Block, IReadOnlyList<ISubject> Subjects)> Of(Study study) => study switch
    {
        RigStudy rig => OfRig(rig),
        TripStudy trip => OfRig(trip.Rig).Concat(OfTrip(trip)),
        RunStudy run => OfRig(run.Rig).Concat(All(run.Block, [run, run.Rig])),
        WeighingStudy weighing => OfRig(weighing.Rig).Concat(All(weighing.Block, [weighing, .. weighing.Passes.SelectMany(pass => pass.Readings), weighing.Rig])),
        _ => [],
    };

    private static IEnumerable<(Block, IReadOnlyList<ISubject>)> All(Block root, IReadOnlyList<ISubject> subjects) => root.WithInner().Select(block => (block, subjects));

    private static IEnumerable<(Block, IReadOnlyList<ISubject>)> OfRig(RigStudy rig)
    {
        foreach (var part in new[] { rig.Vehicle, rig.Trailer, rig.Hitch }.Concat(rig.Loads).Append(rig.Rig))
        {
            foreach (var block in part.WithInner())
            {
                yield return (block, [.. rig.Axles.Where(axle => ReferenceEquals(axle.Axle, block)), rig]);
            }
        }
    }

    private static IEnumerable<(Block, IReadOnlyList<ISubject>)> OfTrip(TripStudy trip)
    {
        ISubject[] whole = trip.Legs is [.., var last] ? [trip, trip.Rig, last] : [trip, trip.Rig];
        yield return (trip.Block, whole);
        foreach (var leg in trip.Legs)
        {
            yield return (leg.Leg, [leg, .. whole]);
            if (leg.Stop is { } stop)
            {
                // What is done at a stop shows on the leg that begins there, not on the one that ends.
                var next = trip.Legs.FirstOrDefault(other => other.Index == leg.Index + 1);
                yield return (stop.Block, next is null ? [stop, leg, .. whole] : [stop, next, leg, .. whole]);
            }
        }
    }
}

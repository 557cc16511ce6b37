using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Editing.Hovering;

/// <summary>Which rig, axle, leg … a line is about. Parts of rigs stand for the rigs that name them.</summary>
internal static class Subjects
{
    private const int MostRigs = 4;

    /// <summary>Those of one sort, as seen from the line, the nearest first.</summary>
    public static IEnumerable<ISubject> At(Spot spot, ResultScope scope)
    {
        if (spot.Linked is not { } declaration)
        {
            return [];
        }

        var nearest = spot.Block is { } block ? Of(spot.View, declaration, block) : [];
        var found = nearest.Where(subject => ScopeOf(subject) == scope).ToList();
        return found.Count > 0 ? found : WithParts(Of(spot.View, declaration, declaration.Block)).Where(subject => ScopeOf(subject) == scope).Distinct();
    }

    /// <summary>The rigs that a declaration is, or is a part of.</summary>
    public static IEnumerable<RigStudy> Rigs(View view, Declaration declaration) => declaration.Kind == DeclarationKind.Rig
        ? [view.State.Analysis.Rig(declaration)]
        : view.State.Rigs.Naming(declaration).Take(MostRigs).Select(parts => view.State.Analysis.Rig(parts.Rig));

    /// <summary>What a block of the declaration stands for: an axle in each rig, a leg, a pass over the scale, or what the declaration itself stands for.</summary>
    public static IEnumerable<ISubject> Of(View view, Declaration declaration, Block block)
    {
        switch (declaration.Kind)
        {
            case DeclarationKind.Trip when view.State.Analysis.Trip(declaration) is { } trip:
                return trip.Legs.Where(leg => ReferenceEquals(leg.Leg, block)).Cast<ISubject>()
                    .Concat(trip.Stops.Where(stop => ReferenceEquals(stop.Block, block))).DefaultIfEmpty(trip);
            case DeclarationKind.Weighing when view.State.Analysis.Weighing(declaration) is { } weighing:
                return weighing.Passes.Where(pass => ReferenceEquals(pass.Block, block)).SelectMany(pass => pass.Readings.Cast<ISubject>()).DefaultIfEmpty(weighing);
            case DeclarationKind.Run when view.State.Analysis.Run(declaration) is { } run:
                return [run];
            case DeclarationKind.Vehicle or DeclarationKind.Trailer:
                var rigs = Rigs(view, declaration).ToList();
                return rigs.SelectMany(rig => rig.Axles).Where(axle => ReferenceEquals(axle.Axle, block)).Cast<ISubject>().Concat(block.Opener is null ? rigs : []);
            default:
                return Rigs(view, declaration);
        }
    }

    private static IEnumerable<ISubject> WithParts(IEnumerable<ISubject> subjects) => subjects.SelectMany<ISubject, ISubject>(subject => subject switch
    {
        RigStudy rig => [rig, .. rig.Axles],
        TripStudy trip => [trip, .. trip.Legs, .. trip.Stops, trip.Rig, .. trip.Rig.Axles],
        LegSubject leg => [leg, leg.Trip, leg.Trip.Rig],
        StopSubject stop => [stop, stop.Leg, stop.Trip, stop.Trip.Rig],
        RunStudy run => [run, run.Rig, .. run.Rig.Axles],
        WeighingStudy weighing => [weighing, .. weighing.Passes.SelectMany(pass => pass.Readings), weighing.Rig],
        _ => [subject],
    });

    private static ResultScope? ScopeOf(ISubject subject) => subject switch
    {
        RigStudy => ResultScope.Rig,
        AxleSubject => ResultScope.Axle,
        TripStudy => ResultScope.Trip,
        LegSubject => ResultScope.Leg,
        StopSubject => ResultScope.Stop,
        WeighingStudy => ResultScope.Weighing,
        ReadingSubject => ResultScope.Reading,
        RunStudy => ResultScope.Run,
        RunSetStudy => ResultScope.RunSet,
        _ => null,
    };
}

using System.Collections.Immutable;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Editing.Hovering;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Editing.Lenses;

/// <summary>The verdict above each rig and trip, in a line.</summary>
internal static class LensBuilder
{
    private const int Longest = 140;

    /// <summary>Where lines are shown; their words are made when the line comes into view.</summary>
    public static ImmutableArray<LineLens> Of(LinkedFile linked, View view) =>
        [.. linked.Declarations.Where(declaration => declaration is { Kind: DeclarationKind.Rig or DeclarationKind.Trip, Name.Length: > 0 })
            .Select(declaration => PlaceMap.RangeOf(view.State.Workspace, declaration.Own.NamePlace) is { } range ? new LineLens(range, declaration.ToString()) : null).OfType<LineLens>()];

    /// <summary>Empty where there is no such rig or trip.</summary>
    public static string Words(LinkedFile linked, View view, string subject)
    {
        var words = linked.Declarations.FirstOrDefault(declaration => declaration.ToString() == subject) switch
        {
            { Kind: DeclarationKind.Rig } rig => OfRig(view.State.Analysis.Rig(rig)),
            { Kind: DeclarationKind.Trip } declaration when view.State.Analysis.Trip(declaration) is { } trip => OfTrip(trip, view),
            { Kind: DeclarationKind.Trip } => "No rig yet",
            _ => "",
        };
        return words.Length <= Longest ? words : words[..(Longest - 1)] + "…";
    }

    /// <summary>The first sentences of the verdict; what wasn't checked is in the report.</summary>
    private static string OfRig(RigStudy rig)
    {
        var verdict = RigCard.Verdict(RatingTable.Of(rig)).Replace("**", "", StringComparison.Ordinal).Replace("`", "", StringComparison.Ordinal);
        var rest = verdict.IndexOf(" Not checked:", StringComparison.Ordinal);
        return (rest < 0 ? verdict : verdict[..rest]).TrimEnd('.');
    }

    private static string OfTrip(TripStudy trip, View view)
    {
        if (TripTable.Of(trip) is not [.., var last] rows)
        {
            return "No leg yet";
        }

        var units = SubjectUnits.Of(trip, view.State.Units);
        var lacking = rows.Select(row => row.Left).FirstOrDefault(left => left is { Applies: true, IsComputed: false });
        var time = TripResults.TotalTime.Compute(trip);
        string?[] parts =
        [
            time is { IsComputed: true } ? $"{units.Write(TripResults.TotalTime, trip, time.Number)} in all" : null,
            last.Arrives is { } arrives ? $"arrives {arrives}" : null,
            last.Left is { Applies: true, IsComputed: true } ? $"{units.Brief(LegResults.EnergyLeft, last.Leg, last.Left.Value)} left{Shown.Mark(last.Left)}" : null,
            TripResults.LeastLeft.Compute(trip) is { Applies: true, IsComputed: true } least ? $"least anywhere {units.Brief(TripResults.LeastLeft, trip, least.Number)}" : null,
            lacking is null ? null : $"energy {Shown.NotComputed(lacking)}".Replace("`", "", StringComparison.Ordinal),
        ];
        return string.Join(", ", parts.OfType<string>());
    }
}

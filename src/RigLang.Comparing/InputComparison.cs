using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Comparing;

/// <summary>Everything that goes in and differs: declarations come, gone or renamed, their lines, used files, tracks.</summary>
internal static class InputComparison
{
    public static ImmutableArray<Change> Compare(ComparedState before, ComparedState after, ImmutableArray<DeclarationPair> pairs)
    {
        var names = pairs.Where(pair => pair.IsRenamed).ToDictionary(pair => (pair.Kind, pair.Before!.Name), pair => pair.After!.Name);
        string NewName(DeclarationKind kind, string name) => names.GetValueOrDefault((kind, name), name);
        return
        [
            .. pairs.SelectMany(pair => OfPair(before, after, pair, NewName)),
            .. after.Files.SelectMany(file => Uses(before, after, after.NameOf(file))),
            .. Tracks(before, after),
        ];
    }

    private static IEnumerable<Change> OfPair(ComparedState before, ComparedState after, DeclarationPair pair, Func<DeclarationKind, string, string> newName)
    {
        if (pair.Before is not { } was)
        {
            var place = before.PlaceOf(after.NameOf(pair.After!.Own.File));
            return [Whole(ChangeKind.Added, pair) with { Steps = [new AppendStep(place, FactLines.TextOf(pair.After))] }];
        }

        return pair.After is null ? [Whole(ChangeKind.Removed, pair) with { Steps = [FactLines.Remove(was)] }]
            : [.. Openings(pair, newName), .. FactComparison.Compare(pair, newName)];
    }

    private static IEnumerable<Change> Openings(DeclarationPair pair, Func<DeclarationKind, string, string> newName)
    {
        var (was, now) = (pair.Before!.Own, pair.After!.Own);
        if (pair.IsRenamed)
        {
            yield return Whole(ChangeKind.Renamed, pair);
        }

        if (was.Title != now.Title)
        {
            yield return Part(ChangeKind.Rewritten, "title", Quoted(was.Title), Quoted(now.Title));
        }

        if ((was.Parent is { } parent ? newName(pair.Kind, parent.Text) : null) != now.Parent?.Text)
        {
            var kind = was.Parent is null ? ChangeKind.Added : now.Parent is null ? ChangeKind.Removed : ChangeKind.Changed;
            var step = new LineStep(was.File, was.Syntax, 0, 1, [Opening(was, now)]);
            yield return Part(kind, "like", was.Parent is { } old ? $"like {old.Text}" : null, now.Parent is { } other ? $"like {other.Text}" : null) with { Steps = [step] };
        }

        Change Part(ChangeKind kind, string what, string? before, string? after) =>
            new(kind, pair.Title, what, before, after) { PlaceBefore = was.NamePlace, PlaceAfter = now.NamePlace };
    }

    /// <summary>The opening line as it is now, under the name it had.</summary>
    private static string Opening(OwnDeclaration was, OwnDeclaration now) =>
        $"{now.Kind!.Value.Keyword()} {was.Name}{(now.Parent is { } parent ? $" like {parent.Text}" : "")}{(was.Title is null ? "" : " " + Quoted(was.Title))}";

    private static string? Quoted(string? title) => title is null ? null : $"\"{title}\"";

    private static Change Whole(ChangeKind kind, DeclarationPair pair) => new(kind, pair.Title, "", pair.Before?.ToString(), pair.After?.ToString())
    {
        PlaceBefore = pair.Before?.Own.NamePlace,
        PlaceAfter = pair.After?.Own.NamePlace,
    };

    private static IEnumerable<Change> Uses(ComparedState before, ComparedState after, string name)
    {
        if (before.Find(name) is not { } oldFile || after.Find(name) is not { } newFile)
        {
            yield break;
        }

        var old = UsesOf(before.Workspace.Find(oldFile)!);
        var now = UsesOf(after.Workspace.Find(newFile)!);
        foreach (var (path, place) in now.Where(use => !old.ContainsKey(use.Key)))
        {
            yield return new Change(ChangeKind.Added, name, $"use \"{path}\"", null, $"use \"{path}\"") { PlaceAfter = place, Steps = [new AppendStep(oldFile, $"use \"{path}\"\n")] };
        }

        foreach (var (path, place) in old.Where(use => !now.ContainsKey(use.Key)))
        {
            yield return new Change(ChangeKind.Removed, name, $"use \"{path}\"", $"use \"{path}\"", null) { PlaceBefore = place, Steps = [new LineStep(oldFile, place.Declaration, 0, 1, [])] };
        }
    }

    private static Dictionary<string, Place> UsesOf(RigFile file) => file.Uses.Where(use => use.Use.Path is not null)
        .DistinctBy(use => use.Use.Path!.Value).ToDictionary(use => use.Use.Path!.Value, use => new Place(file.Id, use.Syntax, 0, use.Use.Span));

    /// <summary>A track that one state alone names came or went with its line.</summary>
    private static IEnumerable<Change> Tracks(ComparedState before, ComparedState after)
    {
        var old = before.Tracks.ToDictionary(before.NameOf);
        foreach (var file in after.Tracks.Where(file => old.ContainsKey(after.NameOf(file))))
        {
            var name = after.NameOf(file);
            var (was, now) = (before.Text(old[name]), after.Text(file));
            if (was != now)
            {
                var kind = was is null ? ChangeKind.Added : now is null ? ChangeKind.Removed : ChangeKind.Changed;
                yield return new Change(kind, name, "track", Size(was), Size(now)) { Steps = [new TrackStep(old[name], now)] };
            }
        }
    }

    private static string? Size(string? text) => text is null ? null : $"{text.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)} characters";
}

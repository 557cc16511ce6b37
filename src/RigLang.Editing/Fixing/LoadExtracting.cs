using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Navigating;
using RigLang.Editing.Outlining;
using RigLang.Editing.Reporting;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Fixing;

/// <summary>
/// Draws lines of a load out into a load of their own, so that they can be left at home. Whatever named the old load names both, so no result changes.
/// Not offered where <c>like</c> is in play: an heir would lose the lines.
/// </summary>
internal static class LoadExtracting
{
    public static IEnumerable<OfferedChange> At(Spot spot, LineRange range)
    {
        if (spot.Linked is not { Kind: DeclarationKind.Load, Parent: null, Name.Length: > 0 } load)
        {
            yield break;
        }

        var first = spot.Position.Line - spot.Line;
        var lines = LinesIn(load, range.Start.Line - first, LastLine(range) - first);
        if (lines.Count > 0 && lines.Count < LinesIn(load, 0, int.MaxValue).Count && !HasHeirs(spot, load))
        {
            var name = FreeName(spot, $"{load.Name}-{lines[0].Key}");
            var what = lines.Count == 1 ? lines[0].Title : $"these {lines.Count} lines";
            yield return new OfferedChange($"Make a load `{name}` of {what}", ChangeSort.Extract, () => Edits(spot, load, first, lines, name));
        }
    }

    /// <summary>Items and tank levels between two lines of the declaration.</summary>
    private static List<Fact> LinesIn(Declaration load, int from, int to) =>
        [.. load.Block.AllBlocks(CargoFacts.Load.Block).SelectMany(on => on.Facts).Where(line => line.Declaration == CargoFacts.Load.Item || line.Declaration == CargoFacts.Load.Fill)
            .Where(line => line.Place.Line >= from && line.Place.Line <= to)];

    /// <summary>A selection that ends before a line's first character doesn't mean that line.</summary>
    private static int LastLine(LineRange range) => range.End.Character == 0 && range.End.Line > range.Start.Line ? range.End.Line - 1 : range.End.Line;

    private static bool HasHeirs(Spot spot, Declaration load) => spot.State.AllFiles.Select(spot.State.Workspace.Link).OfType<LinkedFile>()
        .SelectMany(file => file.Declarations).Any(other => other.Parent?.Own == load.Own);

    private static string FreeName(Spot spot, string wanted)
    {
        var taken = spot.State.AllFiles.Select(spot.State.Workspace.Find).OfType<RigFile>().SelectMany(file => file.Declarations)
            .Where(own => own.Kind == DeclarationKind.Load).Select(own => own.Name).ToHashSet(StringComparer.Ordinal);
        var name = wanted;
        for (var count = 2; taken.Contains(name); count++)
        {
            name = $"{wanted}-{count}";
        }

        return name;
    }

    private static ImmutableArray<(FilePlace Place, string NewText)> Edits(Spot spot, Declaration load, int first, List<Fact> lines, string name)
    {
        var edits = ImmutableArray.CreateBuilder<(FilePlace Place, string NewText)>();
        edits.Add(Split(spot, load.Own.Syntax, first, [.. lines.Select(line => line.Place.Line)], name));
        foreach (var file in spot.State.AllFiles.Prepend(spot.File.Id).Distinct())
        {
            if (spot.State.Workspace.Link(file) is { } linked)
            {
                edits.AddRange(Occurrences.InFile(spot.State, linked)
                    .Where(found => found.Symbol == DeclarationSymbol.Of(load) && !found.IsDeclaration)
                    .Select(found => Twice(spot, linked.File, found.Place, name)).OfType<(FilePlace, string)>());
            }
        }

        return edits.DrainToImmutable();
    }

    /// <summary>The load without the lines, and behind it the new one with them; each line as it was, comment and all.</summary>
    private static (FilePlace Place, string NewText) Split(Spot spot, DeclarationSyntax load, int first, HashSet<int> taken, string name)
    {
        var last = Stretches.LastStatement(load);
        List<string> staying = [load.Lines[0].Text], leaving = [$"{DeclarationKind.Load.Keyword()} {name}"];
        var emptied = load.Nodes.Where(node => node.Children is [_, ..] children && children.All(child => taken.Contains(child.Line))).Select(node => node.Line).ToHashSet();
        var openers = load.Nodes.Where(node => node.Children.Any(child => taken.Contains(child.Line))).Select(node => node.Line).ToHashSet();
        for (var line = 1; line <= last; line++)
        {
            var text = load.Lines[line].Text;
            if (openers.Contains(line))
            {
                leaving.Add(text);
            }

            if (taken.Contains(line))
            {
                leaving.Add(text);
            }
            else if (!emptied.Contains(line))
            {
                staying.Add(text);
            }
        }

        var range = new LineRange(new LinePosition(first, 0), new LinePosition(first + last, load.Lines[last].Text.Length));
        return (new FilePlace(spot.File.Id, range), string.Join(FixEdits.BreakOf(spot.File.Syntax), [.. staying, "", .. leaving]));
    }

    /// <summary>The line that names the old load once more, with the new name: <c>load autumn</c>, <c>without load autumn</c>.</summary>
    private static (FilePlace Place, string NewText)? Twice(Spot spot, RigFile file, Place place, string name)
    {
        var line = place.Declaration.Lines[place.Line];
        if (PlaceMap.Of(spot.State.Workspace, place with { Span = new TextSpan(line.Text.Length, 0) }) is not { } end)
        {
            return null;
        }

        return (end, FixEdits.BreakOf(file.Syntax) + line.Text[..place.Span.Start] + name);
    }
}

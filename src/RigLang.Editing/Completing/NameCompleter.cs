using RigLang.Analysis.Checks;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Editing.Hovering;
using RigLang.Editing.Navigating;
using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Editing.Completing;

/// <summary>Names: of declarations in sight, of what lines have named, of results and checks.</summary>
internal static class NameCompleter
{
    public static void AddDeclarations(Entries entries, LineCaret caret, DeclarationKind kind, string? except = null)
    {
        var spot = caret.Spot;
        foreach (var name in spot.State.Workspace.Link(spot.File.Id)?.NamesInSight(kind).Where(name => name != except) ?? [])
        {
            entries.Add(name, CompletionSort.Name, spot.State.Workspace.Find(spot.File.Id, kind, name)?.Title ?? kind.Keyword(), rank: '2');
        }

        foreach (var practice in BuiltInPractices.All.Where(practice => practice.Kind == kind))
        {
            entries.Add(practice.Name, CompletionSort.Name, $"{practice.Title}, built in", rank: '3');
        }
    }

    public static void AddLocals(Entries entries, LineCaret caret, OpenBlock open, LocalNames of)
    {
        if (caret.Spot.Linked is not { } declaration)
        {
            return;
        }

        var sorts = of switch
        {
            LocalNames.Axle => [LocalSort.Axle],
            LocalNames.Tank => [LocalSort.Tank],
            LocalNames.Leg => [LocalSort.Place],
            _ => caret.Before!.Arguments is [Syntax.Tree.WordSyntax { Text: "fill" }, ..] ? new[] { LocalSort.Tank } : [LocalSort.Item],
        };
        var lines = sorts.SelectMany(sort => LocalScope.Lines(caret.Spot.State, declaration, sort)).ToList();
        if (lines.Count == 0)
        {
            // No rig names this load yet: any vehicle or trailer in sight may come to carry it.
            lines = [.. InSight(caret).SelectMany(owner => sorts.SelectMany(sort => LocalScope.LinesOf(owner, sort)).Select(line => (owner, line)))];
        }

        if (of == LocalNames.Leg)
        {
            // A stop stands right behind its leg, so the leg above is the one that is meant.
            lines = [.. lines.Where(pair => pair.Line.Declaration == TripFacts.Leg).OrderBy(pair => pair.Line.Place.Line > caret.Spot.Line).ThenByDescending(pair => pair.Line.Place.Line)];
        }

        var said = open.Lines.Where(line => line.Declaration == caret.Spot.Declared && line.Place.Line != caret.Spot.Line).Select(line => line.Key).ToHashSet();
        foreach (var (owner, line) in lines)
        {
            var name = LocalScope.NameOf(line)!;
            entries.Add(name, CompletionSort.Name, $"{owner}: {BlockWords.Value(line)}", rank: said.Contains(name) ? '4' : '2');
        }
    }

    public static void AddScaled(Entries entries, LineCaret caret)
    {
        if (caret.Spot.Linked is { } declaration)
        {
            foreach (var (owner, line) in LocalScope.Lines(caret.Spot.State, declaration, LocalSort.Axle))
            {
                entries.Add(LocalScope.NameOf(line)!, CompletionSort.Name, owner.ToString(), rank: '2');
            }
        }

        entries.Add("trailer", CompletionSort.Choice, "all the trailer's axles", rank: '2');
        entries.Add("tongue", CompletionSort.Choice, "the tongue on its own scale", rank: '2');
        entries.Add("left", CompletionSort.Choice, "the left wheel of the axle before it", rank: '3');
        entries.Add("right", CompletionSort.Choice, "the right wheel of the axle before it", rank: '3');
    }

    /// <summary>Points of the vehicle or of the trailer, whichever the line is about.</summary>
    public static void AddPoints(Entries entries, LineCaret caret, OpenBlock open)
    {
        var isTrailer = open.Home.Kind == DeclarationKind.Trailer || open.Block?.Opener?.WordOf("carrier") == "trailer";
        foreach (var point in isTrailer ? new[] { "axle", "coupling", "body" } : ["front-axle", "rear-axle", "ball", "pin"])
        {
            entries.Add(point, CompletionSort.Value, PointCard.Meaning(point)!, rank: '2');
        }

        if (isTrailer && caret.Spot.Linked is { } declaration)
        {
            foreach (var (owner, line) in LocalScope.Lines(caret.Spot.State, declaration, LocalSort.Axle).Where(pair => pair.Owner.Kind == DeclarationKind.Trailer))
            {
                entries.Add(LocalScope.NameOf(line)!, CompletionSort.Name, $"axle of {owner}", rank: '3');
            }
        }
    }

    /// <summary>Lines of the declaration that this one is like, to take one away.</summary>
    public static void AddInherited(Entries entries, LineCaret caret, OpenBlock open)
    {
        foreach (var line in open.Lines.Where(line => line.Place.Declaration != caret.Spot.Own.Syntax))
        {
            entries.Add(line.Title, CompletionSort.Name, BlockWords.Value(line), rank: '2');
        }
    }

    /// <summary>All results, those of what the line stands in first.</summary>
    public static void AddResults(Entries entries, LineCaret caret, OpenBlock open)
    {
        var scopes = ScopesOf(open.Home);
        foreach (var result in Catalogue.Results.OrderBy(result => Array.IndexOf(scopes, result.Scope) is var at and >= 0 ? at : scopes.Length))
        {
            entries.Add(result.Name, CompletionSort.Result, result.Title, $"{result.Meaning}\n\n= {result.Formula}", insert: result.Name + (caret.WordEnd < caret.Spot.Syntax.Text.Length ? "" : " "), rank: scopes.Contains(result.Scope) ? '2' : '6');
        }
    }

    /// <summary>The checks that have something to say about this declaration first, then all that can be accepted.</summary>
    public static void AddChecks(Entries entries, LineCaret caret, CancellationToken cancel)
    {
        var spot = caret.Spot;
        foreach (var finding in spot.State.Analysis.Findings(spot.File.Id, cancel).Remaining.Where(finding => finding.Place.Declaration == spot.Own.Syntax && finding.Check.CanBeAllowed))
        {
            entries.Add(finding.Check.Slug, CompletionSort.Check, finding.Message, CheckCard.Of(finding.Check).ToString(), insert: $"{finding.Check.Slug} because \"$1\"", rank: '1', isSnippet: true);
        }

        foreach (var check in AnalysisChecks.Declarations.Where(check => check.CanBeAllowed))
        {
            entries.Add(check.Slug, CompletionSort.Check, check.Summary, CheckCard.Of(check).ToString(), insert: $"{check.Slug} because \"$1\"", rank: '3', isSnippet: true);
        }
    }

    private static IEnumerable<Declaration> InSight(LineCaret caret)
    {
        var (workspace, file) = (caret.Spot.State.Workspace, caret.Spot.File.Id);
        return new[] { DeclarationKind.Vehicle, DeclarationKind.Trailer }
            .SelectMany(kind => workspace.Link(file)!.NamesInSight(kind).Select(name => workspace.Find(file, kind, name))).OfType<Declaration>();
    }

    private static ResultScope[] ScopesOf(BlockDeclaration home) =>
        home == LegFacts.Block ? [ResultScope.Leg]
        : home == StopFacts.Block ? [ResultScope.Stop]
        : home.Kind switch
        {
            DeclarationKind.Trip => [ResultScope.Trip, ResultScope.Leg],
            DeclarationKind.Weighing => [ResultScope.Weighing, ResultScope.Reading],
            DeclarationKind.Run => [ResultScope.Run],
            _ => [ResultScope.Rig, ResultScope.Axle],
        };
}

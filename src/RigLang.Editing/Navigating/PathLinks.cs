using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Editing.Workspaces;
using RigLang.Model.Linking;
using RigLang.Syntax;

namespace RigLang.Editing.Navigating;

/// <summary>Paths of other files in a text: what <c>use</c> names, and tracks.</summary>
internal static class PathLinks
{
    public static ImmutableArray<FileLink> Of(EditorState state, LinkedFile linked)
    {
        var links = ImmutableArray.CreateBuilder<FileLink>();
        foreach (var found in Occurrences.Paths(state, linked))
        {
            if (found.Symbol is FileSymbol { File: var target } && PlaceMap.RangeOf(state.Workspace, WithoutQuotes(found.Place)) is { } range)
            {
                links.Add(new FileLink(range, target, $"Open {target.Name}"));
            }
        }

        return links.DrainToImmutable();
    }

    private static Model.Binding.Place WithoutQuotes(Model.Binding.Place place)
    {
        var text = place.Text;
        var start = text.StartsWith('"') ? 1 : 0;
        var end = text.Length > 1 && text.EndsWith('"') ? 1 : 0;
        return place with { Span = new TextSpan(place.Span.Start + start, Math.Max(0, place.Span.Length - start - end)) };
    }
}

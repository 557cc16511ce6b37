using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Syntax.Checks;

namespace RigLang.Comparing;

/// <summary>A file with lines that can't be understood in one of the states; what those lines say is in no comparison.</summary>
/// <param name="Before">Errors of writing before.</param>
/// <param name="After">Errors of writing now.</param>
/// <param name="TextBefore">The lines; empty where the file wasn't there.</param>
/// <param name="TextAfter">The lines; empty where the file is gone.</param>
public sealed record UnreadFile(string Name, ImmutableArray<Finding> Before, ImmutableArray<Finding> After, ImmutableArray<string> TextBefore, ImmutableArray<string> TextAfter);

/// <summary>Finds them.</summary>
internal static class UnreadFiles
{
    public static ImmutableArray<UnreadFile> Of(ComparedState before, ComparedState after) =>
    [
        .. from name in before.Names.Values.Union(after.Names.Values).Order(StringComparer.Ordinal)
           let was = before.Find(name)
           let now = after.Find(name)
           let old = Unread(before, was)
           let left = Unread(after, now)
           where !old.IsEmpty || !left.IsEmpty
           select new UnreadFile(name, old, left, Lines(before, was), Lines(after, now)),
    ];

    /// <summary>Errors of single lines and openings, whose lines are left out of everything else.</summary>
    private static ImmutableArray<Finding> Unread(ComparedState state, FileId? file) => file is { } there
        ? [.. state.Workspace.Find(there)!.Declarations.SelectMany(own => own.Findings).Where(finding => finding.Severity == Severity.Error)]
        : [];

    private static ImmutableArray<string> Lines(ComparedState state, FileId? file) => file is { } there ? [.. state.Workspace.Find(there)!.Syntax.Lines.Select(line => line.Text)] : [];
}

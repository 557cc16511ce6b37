using System.Collections.Immutable;
using RigLang.Model.Files;

namespace RigLang.Editing;

/// <summary>The same name at another place of a file; <paramref name="IsMade"/> where it is made, else it is used there.</summary>
public readonly record struct NameHighlight(LineRange Range, bool IsMade);

/// <summary>The name that a rename would change, or why none can be changed here.</summary>
public sealed record RenameTarget(LineRange Range, string Name, string? Refusal = null);

/// <summary>What a rename changes, over files; or why it would change what something means, and then no edits.</summary>
public sealed record RenameAnswer(ImmutableArray<(FilePlace Place, string NewText)> Edits, string? Refusal = null)
{
    public static RenameAnswer Refused(string why) => new([], why);
}

/// <summary>A path in a text, and the file it means.</summary>
public sealed record FileLink(LineRange Range, FileId Target, string Tooltip);

/// <summary>A name made somewhere in the workspace, and what it is part of.</summary>
public sealed record NamedPlace(string Name, string Container, OutlineSort Sort, FilePlace Place);

using System.Collections.Immutable;
using RigLang.Cli.Files;
using RigLang.Model.Declaring;

namespace RigLang.Cli.Showing;

/// <summary>What a person wants shown: by name, by kind and name, or all there is in a place.</summary>
/// <param name="Kind">Null when nothing is said.</param>
/// <param name="Name">Null for everything.</param>
/// <param name="Paths">Where to look; empty for the current folder.</param>
public sealed record SubjectQuery(DeclarationKind? Kind, string? Name, ImmutableArray<string> Paths)
{
    /// <summary>Reads <c>[PATH] [KIND] [NAME]</c>. The first word is a path when it looks like one, or when there is such a file or folder.</summary>
    /// <param name="words">As typed.</param>
    /// <param name="within">A path given apart.</param>
    /// <param name="folder">The current folder.</param>
    public static SubjectQuery Of(IReadOnlyList<string> words, string? within, string folder)
    {
        var rest = words.ToList();
        var paths = within is null ? new List<string>() : [within];
        if (rest.Count > 0 && within is null && IsPath(rest[0], rest.Count, folder))
        {
            paths.Add(rest[0]);
            rest.RemoveAt(0);
        }

        DeclarationKind? kind = null;
        if (rest.Count > 1 && DeclarationKinds.Find(rest[0]) is { } named)
        {
            kind = named;
            rest.RemoveAt(0);
        }

        return new SubjectQuery(kind, rest.Count > 0 ? string.Join(' ', rest) : null, [.. paths]);
    }

    private static bool IsPath(string word, int words, string folder)
    {
        if (word.Contains('/', StringComparison.Ordinal) || word.Contains('\\', StringComparison.Ordinal) || word.EndsWith(".rig", StringComparison.Ordinal) || word is "." or "..")
        {
            return true;
        }

        // "rig coast" is a kind and a name, be there a folder called rig or not.
        var isKind = words > 1 && DeclarationKinds.Find(word) is not null;
        return !isKind && word.Length > 0 && !word.Contains('\0', StringComparison.Ordinal) && Path.Exists(DiskPaths.Absolute(word, folder));
    }
}

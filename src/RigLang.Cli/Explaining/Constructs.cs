using System.Collections.Immutable;

namespace RigLang.Cli.Explaining;

/// <summary>The few words and signs of the language that belong to no block.</summary>
internal static class Constructs
{
    private static readonly ImmutableArray<Article> All =
    [
        new("use", "line in the first column", "Brings the declarations written in another file into sight; not those which that file uses in turn.", [new("such as", "use \"vehicles/van.rig\"")]),
        new("like", "word in an opening", "The declaration has every line of the other; a line of its own with the same keyword and key takes its place.", [new("such as", "rig coast-full like coast \"Front axle fully restored\"")]),
        new("language", "first line of a file", "Says for which edition of the language the file was written. Estimates change over the years.", [new("such as", "language 1")]),
        new("±", "sign", "The half-width that holds the true value 19 times out of 20. +- is read too. On a fact that is itself a share, ± 2 % means points.", [new("such as", "mass 1790 kg ± 15 kg")]),
        new("?", "sign", "Asked and not known: an estimate stands in where there is one, and the list of open questions names it.", [new("such as", "yaw-inertia ?")]),
        new("#", "sign", "A comment, from here to the line's end. Comments never change anything.", []),
    ];

    public static IEnumerable<string> Words => All.Select(article => article.Word);

    public static IEnumerable<Article> Find(string word) => All.Where(article => article.Word == (word is "+-" ? "±" : word));
}

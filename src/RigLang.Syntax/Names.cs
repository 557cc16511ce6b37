using RigLang.Syntax.Scanning;

namespace RigLang.Syntax;

/// <summary>What holds for every name and keyword of the language.</summary>
public static class Names
{
    /// <summary>True for lower-case letters of any script and digits, joined by single hyphens, a letter first.</summary>
    public static bool IsName(ReadOnlySpan<char> word) => NameShape.IsName(word);

    /// <summary>
    /// The one spelling (Unicode Normalization Form C) of a name whose accented letters can be typed in several ways. The words of the tree are in it already;
    /// names from elsewhere (a request, a command line) go through here before they are compared.
    /// </summary>
    public static string Compose(string name) => Composition.IsNeeded(name) ? Composition.Compose(name) : name;
}

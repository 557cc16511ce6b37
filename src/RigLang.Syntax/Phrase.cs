namespace RigLang.Syntax;

/// <summary>Fits declared words, titles and meanings into sentences.</summary>
public static class Phrase
{
    /// <summary>"a length", "an angle".</summary>
    public static string WithArticle(string noun) => ("aeiou".Contains(noun[0], StringComparison.Ordinal) ? "an " : "a ") + noun;

    /// <summary>"1 line", "3 lines".</summary>
    public static string Many(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";

    /// <summary>A meaning, which is declared with a small letter, at the head of a line.</summary>
    public static string Capital(string words) => words.Length == 0 ? "" : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A title in the middle of a line.</summary>
    public static string Small(string words) => words.Length == 0 ? "" : char.ToLowerInvariant(words[0]) + words[1..];

    /// <summary>With a capital letter and a full stop, unless it ends with a stop of its own.</summary>
    public static string Sentence(string words) => Capital(words) + (words is "" or [.., '.' or '?' or '!'] ? "" : ".");
}

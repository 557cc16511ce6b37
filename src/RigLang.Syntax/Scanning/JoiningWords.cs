namespace RigLang.Syntax.Scanning;

/// <summary>The words that join arguments. None of them is ever the unit of a number before it; that is why no unit may be spelled like one.</summary>
internal static class JoiningWords
{
    public static bool Contains(ReadOnlySpan<char> word) => word switch
    {
        "at" or "behind" or "ahead" or "of" or "high" or "left" or "right" or "on" or "from" or "for"
            or "within" or "speed" or "because" or "like" or "least" or "most" or "x" or "to" or "and" => true,
        _ => false,
    };

    public static AtomKind KindOf(ReadOnlySpan<char> word) => word switch
    {
        "for" => AtomKind.For,
        "least" => AtomKind.Least,
        "most" => AtomKind.Most,
        "within" => AtomKind.Within,
        "at" => AtomKind.At,
        "like" => AtomKind.Like,
        _ => AtomKind.Word,
    };
}

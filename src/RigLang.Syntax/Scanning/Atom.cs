using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <summary>The smallest piece of a line that has a meaning, with its class.</summary>
internal readonly record struct Atom(AtomKind Kind, Token Token)
{
    public TextSpan Span => Token.Span;

    public bool IsWord => Kind is AtomKind.Word or AtomKind.For or AtomKind.Least or AtomKind.Most or AtomKind.Within or AtomKind.At or AtomKind.Like;

    public bool IsNumber => Kind is AtomKind.Number or AtomKind.SmallerNumber or AtomKind.Count;
}

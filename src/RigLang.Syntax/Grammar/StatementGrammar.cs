using System.Collections.Immutable;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;
using static RigLang.Syntax.Grammar.ArgumentGrammar;
using static RigLang.Syntax.Grammar.AtomParsers;

namespace RigLang.Syntax.Grammar;

/// <summary>What a whole line can be. Each parser takes every atom of its line; it has been chosen by the first word and the column.</summary>
internal static class StatementGrammar
{
    private static readonly Parser<ImmutableArray<ArgumentSyntax>> Rest = All(Argument);

    // fact = keyword, { blank, argument }
    public static readonly Parser<FactSyntax> Fact =
        from keyword in AnyWord
        from arguments in Rest
        select new FactSyntax(From(keyword, arguments, keyword.Span.End), keyword, arguments);

    /// <summary>What doesn't begin with a word is no statement; it is kept piece by piece.</summary>
    public static readonly Parser<StrayLineSyntax> StrayLine =
        from arguments in Rest
        select new StrayLineSyntax(TextSpan.FromBounds(arguments[0].Span.Start, arguments[^1].Span.End), arguments);

    // opening = kind, blank, name, [ blank, "like", blank, name ], [ blank, text ]
    private static readonly Parser<LikePart> Like =
        from keyword in Of(AtomKind.Like)
        from parent in IfWord
        select new LikePart(keyword, parent);

    private static readonly Parser<LikePart> NoSecondLike = static input => Result.Failure<LikePart>(input, "", []);

    /// <summary>A <c>like</c> behind the title is read too, and reported.</summary>
    public static readonly Parser<OpeningSyntax> Opening =
        from kind in AnyWord
        from name in If(AtomKind.Word)
        from like in If(AtomKind.Like, Like)
        from title in If(AtomKind.Text, Text)
        from late in If(AtomKind.Like, like is null ? Like : NoSecondLike)
        from stray in Rest
        select NewOpening(kind, name, like ?? late, title, stray);

    // use = "use", blank, text
    public static readonly Parser<UseSyntax> Use =
        from keyword in AnyWord
        from path in If(AtomKind.Text, Text)
        from stray in Rest
        select new UseSyntax(From(keyword, stray, path?.Span.End ?? keyword.Span.End), keyword, path, stray);

    // a first line may be "language", blank, digits
    public static readonly Parser<LanguageSyntax> Language =
        from keyword in AnyWord
        from edition in If(AtomKind.Number)
        from stray in Rest
        select new LanguageSyntax(From(keyword, stray, edition?.Span.End ?? keyword.Span.End), keyword, edition, stray);

    private static OpeningSyntax NewOpening(Token kind, Token? name, LikePart? like, TextSyntax? title, ImmutableArray<ArgumentSyntax> stray)
    {
        var lastOfLike = (like?.Parent ?? like?.Keyword)?.Span.End ?? 0;
        var end = Math.Max(Math.Max((name ?? kind).Span.End, title?.Span.End ?? 0), lastOfLike);
        return new OpeningSyntax(From(kind, stray, end), kind, name, like?.Keyword, like?.Parent, title, stray);
    }

    private static TextSpan From(Token first, ImmutableArray<ArgumentSyntax> last, int endWithout) =>
        TextSpan.FromBounds(first.Span.Start, last.Length > 0 ? last[^1].Span.End : endWithout);

    private sealed record LikePart(Token Keyword, Token? Parent);
}

using System.Collections.Immutable;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;
using static RigLang.Syntax.Grammar.AtomParsers;
using static RigLang.Syntax.Grammar.ArgumentGrammar;

namespace RigLang.Syntax.Grammar;

/// <summary>What a whole line can be. Each parser takes every atom of its line; it has been chosen by the first word and the column.</summary>
internal static class StatementGrammar
{
    private static readonly Parser<IEnumerable<ArgumentSyntax>> Rest = Argument.Many();

    // fact = keyword, { blank, argument }
    public static readonly Parser<FactSyntax> Fact =
        from keyword in Any
        from arguments in Rest
        select NewFact(keyword.Token, [.. arguments]);

    // opening = kind, blank, name, [ blank, "like", blank, name ], [ blank, text ]
    private static readonly Parser<(Token Keyword, Token? Parent)> LikePart =
        from keyword in Of(AtomKind.Like)
        from parent in Name.Optional()
        select (keyword, parent.OrNull());

    private static readonly Parser<Token> OpeningName =
        from name in Of(AtomKind.Word)
        select name;

    /// <summary>A title before <c>like</c> is read too, and reported.</summary>
    public static readonly Parser<OpeningSyntax> Opening =
        from kind in AnyWord
        from name in OpeningName.Optional()
        from like in LikePart.Optional()
        from title in Text.Optional()
        from late in LikePart.Optional()
        from stray in Rest
        select NewOpening(kind, name.OrNull(), like.IsDefined ? like : late, title.OrNothing(), like.IsDefined && late.IsDefined ? late : null, [.. stray]);

    // use = "use", blank, text
    public static readonly Parser<UseSyntax> Use =
        from keyword in AnyWord
        from path in Text.Optional()
        from stray in Rest
        select NewUse(keyword, path.OrNothing(), [.. stray]);

    // a first line may be "language", blank, digits
    public static readonly Parser<LanguageSyntax> Language =
        from keyword in AnyWord
        from edition in Of(AtomKind.Number).Optional()
        from stray in Rest
        select NewLanguage(keyword, edition.OrNull(), [.. stray]);

    private static FactSyntax NewFact(Token keyword, ImmutableArray<ArgumentSyntax> arguments) =>
        new(TextSpan.FromBounds(keyword.Span.Start, arguments.Length > 0 ? arguments[^1].Span.End : keyword.Span.End), keyword, arguments);

    private static OpeningSyntax NewOpening(
        Token kind, Token? name, IOption<(Token Keyword, Token? Parent)> like, TextSyntax? title, IOption<(Token Keyword, Token? Parent)>? second, ImmutableArray<ArgumentSyntax> stray)
    {
        if (second is not null)
        {
            var (keyword, other) = second.Get();
            stray = other is { } word ? stray.Insert(0, new WordSyntax(word.Span, word.Text)) : stray;
            stray = stray.Insert(0, new WordSyntax(keyword.Span, keyword.Text));
        }

        var (likeKeyword, parent) = like.IsDefined ? ((Token?)like.Get().Keyword, like.Get().Parent) : (null, null);
        var end = new[] { kind.Span.End, name?.Span.End ?? 0, likeKeyword?.Span.End ?? 0, parent?.Span.End ?? 0, title?.Span.End ?? 0, stray.Length > 0 ? stray[^1].Span.End : 0 }.Max();
        return new OpeningSyntax(TextSpan.FromBounds(kind.Span.Start, end), kind, name, likeKeyword, parent, title, stray);
    }

    private static UseSyntax NewUse(Token keyword, TextSyntax? path, ImmutableArray<ArgumentSyntax> stray) =>
        new(TextSpan.FromBounds(keyword.Span.Start, stray.Length > 0 ? stray[^1].Span.End : path?.Span.End ?? keyword.Span.End), keyword, path, stray);

    private static LanguageSyntax NewLanguage(Token keyword, Token? edition, ImmutableArray<ArgumentSyntax> stray) =>
        new(TextSpan.FromBounds(keyword.Span.Start, stray.Length > 0 ? stray[^1].Span.End : edition?.Span.End ?? keyword.Span.End), keyword, edition, stray);
}

using System.Collections.Immutable;

namespace RigLang.Syntax.Tree;

/// <summary>What one line says. The span runs from its first word to its last, comment left out.</summary>
public abstract record StatementSyntax(TextSpan Span);

/// <summary><c>vehicle van like other "Title"</c> in the first column. A part that is missing is null; what follows in excess is in <see cref="Stray"/>.</summary>
public sealed record OpeningSyntax(
    TextSpan Span, Token Kind, Token? Name, Token? LikeKeyword, Token? Parent, TextSyntax? Title, ImmutableArray<ArgumentSyntax> Stray) : StatementSyntax(Span);

/// <summary><c>use "path"</c> in the first column.</summary>
public sealed record UseSyntax(TextSpan Span, Token Keyword, TextSyntax? Path, ImmutableArray<ArgumentSyntax> Stray) : StatementSyntax(Span);

/// <summary><c>language 1</c> as the file's first line.</summary>
public sealed record LanguageSyntax(TextSpan Span, Token Keyword, Token? Edition, ImmutableArray<ArgumentSyntax> Stray) : StatementSyntax(Span);

/// <summary>A line that doesn't begin with a word. It is reported, belongs to nothing and is in no node.</summary>
public sealed record StrayLineSyntax(TextSpan Span, ImmutableArray<ArgumentSyntax> Arguments) : StatementSyntax(Span);

/// <summary>A keyword with its arguments: a fact, or the head of a block.</summary>
public sealed record FactSyntax(TextSpan Span, Token Keyword, ImmutableArray<ArgumentSyntax> Arguments) : StatementSyntax(Span);

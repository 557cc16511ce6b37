using System.Collections.Immutable;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;

namespace RigLang.Syntax.Grammar;

/// <summary>
/// The terminals of the grammar, and the three ways of putting parsers together that Sprache has only with going back: the class of the next atom always tells
/// which way to go, so nothing is tried in vain. (Sprache collects what it expected on every failure; that would cost more than the reading.)
/// </summary>
internal static class AtomParsers
{
    private static readonly string[] Nothing = [];

    public static readonly Parser<Token> AnyWord = One(static kind => kind is AtomKind.Word or AtomKind.For or AtomKind.Least or AtomKind.Most or AtomKind.Within or AtomKind.At or AtomKind.Like);

    public static readonly Parser<Token> Any = One(static _ => true);

    /// <summary>One atom of a class.</summary>
    public static Parser<Token> Of(AtomKind kind) => input =>
    {
        var here = (AtomInput)input;
        return here.Kind == kind ? Result.Success(here.Token, here.Advance()) : Result.Failure<Token>(input, "", Nothing);
    };

    /// <summary>An optional part, known by the class of its first atom; null where another class follows.</summary>
    public static Parser<T?> If<T>(AtomKind first, Parser<T> part)
        where T : class
    {
        return input => ((AtomInput)input).Kind == first ? OrNull(part(input), input) : Result.Success<T?>(null, input);
    }

    /// <summary>An optional atom of a class; null where another class follows.</summary>
    public static Parser<Token?> If(AtomKind kind) => input =>
    {
        var here = (AtomInput)input;
        return here.Kind == kind ? Result.Success<Token?>(here.Token, here.Advance()) : Result.Success<Token?>(null, input);
    };

    /// <summary>An optional word of any class.</summary>
    public static readonly Parser<Token?> IfWord = static input =>
    {
        var here = (AtomInput)input;
        return !here.AtEnd && here.Atom.IsWord ? Result.Success<Token?>(here.Token, here.Advance()) : Result.Success<Token?>(null, input);
    };

    /// <summary>What the class of the next atom calls for; a part that then isn't complete counts as <paramref name="otherwise"/>.</summary>
    public static Parser<T> Choice<T>(Func<AtomKind, Parser<T>?> parts, Parser<T> otherwise) => input =>
    {
        if (parts(((AtomInput)input).Kind) is { } part)
        {
            var result = part(input);
            if (result.WasSuccessful)
            {
                return result;
            }
        }

        return otherwise(input);
    };

    /// <summary>As many of a part as there are.</summary>
    public static Parser<ImmutableArray<T>> All<T>(Parser<T> part) => input =>
    {
        var found = ImmutableArray.CreateBuilder<T>();
        var at = input;
        while (!at.AtEnd && part(at) is { WasSuccessful: true } result)
        {
            found.Add(result.Value);
            at = result.Remainder;
        }

        return Result.Success(found.Count == 0 ? [] : found.DrainToImmutable(), at);
    };

    /// <summary>As many of a part as there are, each known by the class of its first atom.</summary>
    public static Parser<ImmutableArray<T>> AllOn<T>(Func<AtomKind, bool> first, Parser<T> part)
    {
        var all = All(part);
        return input => first(((AtomInput)input).Kind) ? all(input) : Result.Success(ImmutableArray<T>.Empty, input);
    }

    private static Parser<Token> One(Func<AtomKind, bool> fits) => input =>
    {
        var here = (AtomInput)input;
        return !here.AtEnd && fits(here.Kind) ? Result.Success(here.Token, here.Advance()) : Result.Failure<Token>(input, "", Nothing);
    };

    private static IResult<T?> OrNull<T>(IResult<T> result, IInput input)
        where T : class => result.WasSuccessful ? result : Result.Success<T?>(null, input);
}

using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;

namespace RigLang.Syntax.Grammar;

/// <summary>The terminals of the grammar: one atom of a class, as the token that the scanner made of it.</summary>
internal static class AtomParsers
{
    public static readonly Parser<Token> AnyWord = One(static atom => atom.IsWord, "a word");
    public static readonly Parser<Token> Name = AnyWord;
    public static readonly Parser<Atom> Any = static input =>
    {
        var here = (AtomInput)input;
        return here.AtEnd ? Result.Failure<Atom>(input, "", []) : Result.Success(here.Atom, here.Advance());
    };

    public static Parser<Token> Of(AtomKind kind)
    {
        string[] expectations = [kind.ToString()];
        return input =>
        {
            var here = (AtomInput)input;
            return !here.AtEnd && here.Atom.Kind == kind
                ? Result.Success(here.Atom.Token, here.Advance())
                : Result.Failure<Token>(input, "", expectations);
        };
    }

    private static Parser<Token> One(Func<Atom, bool> fits, string expected)
    {
        string[] expectations = [expected];
        return input =>
        {
            var here = (AtomInput)input;
            return !here.AtEnd && fits(here.Atom)
                ? Result.Success(here.Atom.Token, here.Advance())
                : Result.Failure<Token>(input, "", expectations);
        };
    }

    /// <summary>The token, or null where the optional parser found none.</summary>
    public static Token? OrNull(this IOption<Token> option) => option.IsDefined ? option.Get() : null;

    public static T? OrNothing<T>(this IOption<T> option)
        where T : class => option.IsDefined ? option.Get() : null;
}

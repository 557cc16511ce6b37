using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class OpeningWithoutName
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL126",
        Slug = "opening-without-name",
        Severity = Severity.Error,
        Summary = "A declaration is opened without a name, or without the name behind `like`.",
        Why = "Rigs, trips and weighings refer to vehicles, trailers and loads by name; what has none can't be used.",
        Bad = "vehicle \"Electric people carrier\"\n    wheelbase 2.94 m\n",
        Good = "vehicle van \"Electric people carrier\"\n    wheelbase 2.94 m\n",
        Fix = "Write a short name behind the first word: small letters, digits, hyphens.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(OpeningSyntax opening) =>
        new(Check, opening.Kind.Span, $"This {opening.Kind.Text} has no name: write one behind it, as in `{opening.Kind.Text} blue \"Title\"`.");

    internal static LineFinding OfParent(Token like) => new(Check, like.Span, "Behind `like` stands the name of the declaration that this one is like.");
}

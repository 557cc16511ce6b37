using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class OpeningOutOfOrder
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL127",
        Slug = "opening-out-of-order",
        Severity = Severity.Error,
        Summary = "The title of a declaration stands before its `like`.",
        Why = "One order keeps openings easy to search and to compare: kind, name, `like` other, title.",
        Bad = "rig full \"Front axle restored\" like coast\n",
        Good = "rig full like coast \"Front axle restored\"\n",
        Fix = "Put the title last.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSyntax title, string titleText, Token like, Token? parent, string between)
    {
        var whole = TextSpan.FromBounds(title.Span.Start, parent?.Span.End ?? like.Span.End);
        var swapped = like.Text + (parent is { } name ? between + name.Text : "") + " " + titleText;
        return new LineFinding(Check, whole, "The title comes last: kind, name, like other, title.", [new LineFix("Put the title last", whole, swapped)]);
    }
}

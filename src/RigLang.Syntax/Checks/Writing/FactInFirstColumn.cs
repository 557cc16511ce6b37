using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class FactInFirstColumn
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL103",
        Slug = "fact-in-first-column",
        Severity = Severity.Error,
        Summary = "A line in the first column begins no declaration.",
        Why = "The first column is for openings (vehicle, trailer, hitch, load, rig, trip, weighing, run, practice), `use` and `language`. A fact that stands there has lost its owner.",
        Bad = "vehicle van\nwheelbase 2.94 m\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Indent the line under the declaration that it belongs to.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(Token keyword) =>
        new(Check, keyword.Span, $"{Shown.Of(keyword.Text)} in the first column begins no declaration. If it is a fact of the declaration above, indent it.",
            [new LineFix("Indent by 4", new TextSpan(keyword.Span.Start, 0), "    ")]);
}

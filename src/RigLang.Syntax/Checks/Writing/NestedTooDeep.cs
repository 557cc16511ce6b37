using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class NestedTooDeep
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL104",
        Slug = "nested-too-deep",
        Severity = Severity.Error,
        Summary = "A line is indented under a fact of a block.",
        Why = "There are three levels: a declaration, its facts and blocks, and the facts of a block. What stands deeper belongs to nothing.",
        Bad = "vehicle van\n    axle front\n        carries 1195 kg\n            track-width 1.63 m\n",
        Good = "vehicle van\n    axle front\n        carries 1195 kg\n        track-width 1.63 m\n",
        Fix = "Indent the line like the facts of the block that it belongs to.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(LineSyntax line, int blockColumn) =>
        new(Check, line.Statement!.Span, $"This line is nested deeper than the facts of a block ever are: indent it by {blockColumn}.",
            [new LineFix($"Indent by {blockColumn}", new TextSpan(0, line.IndentLength), new string(' ', blockColumn))]);
}

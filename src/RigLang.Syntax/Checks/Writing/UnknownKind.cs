using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class UnknownKind
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL128",
        Slug = "unknown-kind",
        Severity = Severity.Error,
        Summary = "A line in the first column opens a declaration of no known kind.",
        Why = "Nothing in a declaration of unknown kind can be read or checked.",
        Bad = "vehicel van \"Electric people carrier\"\n    wheelbase 2.94 m\n",
        Good = "vehicle van \"Electric people carrier\"\n    wheelbase 2.94 m\n",
        Fix = "The kinds are vehicle, trailer, hitch, load, rig, trip, weighing, run and practice.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(Token typed, string meant) =>
        new(Check, typed.Span, $"There is no kind {Shown.Of(typed.Text)}; {Shown.Of(meant)} is meant? The kinds are vehicle, trailer, hitch, load, rig, trip, weighing, run, practice.",
            [new LineFix($"Write {meant}", typed.Span, meant)]);
}

namespace RigLang.Syntax.Checks.Writing;

public static class QuestionUnfinished
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL122",
        Slug = "question-unfinished",
        Severity = Severity.Error,
        Summary = "A `?` says that something shall be solved, but not for what.",
        Why = "`? for RESULT = VALUE` needs both, `? least RESULT` and `? most RESULT` the result, and `within` its range.",
        Bad = "rig tour\n    restoration ? for front-axle-load\n",
        Good = "rig tour\n    restoration ? for front-axle-load = 4400 lb\n",
        Fix = "Complete the question, or leave the `?` alone: asked and not known.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan question, string missing) => new(Check, question, $"This question lacks {missing}. It is written `? for RESULT = VALUE`, `? least RESULT` or `? most RESULT`, then if wanted `within LOW .. HIGH`.");
}

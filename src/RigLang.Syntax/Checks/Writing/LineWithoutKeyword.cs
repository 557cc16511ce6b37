namespace RigLang.Syntax.Checks.Writing;

public static class LineWithoutKeyword
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL137",
        Slug = "line-without-keyword",
        Severity = Severity.Error,
        Summary = "A line doesn't begin with a word.",
        Why = "The first word says what a line is about; a value alone belongs to nothing. A line isn't continued on the next.",
        Bad = "vehicle van\n    wheelbase\n    2.94 m\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Begin the line with its keyword, or join it to the line above.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, ReadOnlySpan<char> typed) => new(Check, span, $"A line begins with a keyword, not with {Shown.Of(typed)}. A fact isn't continued on a second line.");
}

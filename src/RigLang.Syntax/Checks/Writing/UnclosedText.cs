namespace RigLang.Syntax.Checks.Writing;

public static class UnclosedText
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL106",
        Slug = "unclosed-text",
        Severity = Severity.Error,
        Summary = "A text in quotes has no closing quote.",
        Why = "The text then runs to the end of the line and takes what follows, a comment included, with it.",
        Bad = "vehicle van \"Electric people carrier\n",
        Good = "vehicle van \"Electric people carrier\"\n",
        Fix = "Close the text with a double quote.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan text) =>
        new(Check, text, "This text isn't closed, so it runs to the end of the line: put a closing quote behind it.", [new LineFix("Close the text", new TextSpan(text.End, 0), "\"")]);
}

namespace RigLang.Syntax.Checks.Writing;

public static class StrayText
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL136",
        Slug = "stray-text",
        Severity = Severity.Error,
        Summary = "Part of a line is nothing that the language knows.",
        Why = "What isn't understood isn't used, and might have been meant.",
        Bad = "vehicle van\n    wheelbase 2.94 m @@\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Take it out, put it in double quotes if it is text, or behind `#` if it is a remark.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, ReadOnlySpan<char> typed) => new(Check, span, $"{Shown.Of(typed)} isn't understood here. Text stands in double quotes, a remark behind #.");

    /// <summary>Words behind a declaration's name: a title that lacks its quotes.</summary>
    internal static LineFinding OfTitle(TextSpan span, string typed) =>
        new(Check, span, $"{Shown.Of(typed)} isn't understood here. If it is a title, put it in double quotes.", [new LineFix("Put the title in quotes", span, $"\"{typed}\"")]);

    internal static LineFinding OfExcess(TextSpan span, ReadOnlySpan<char> typed, string complete) => new(Check, span, $"{Shown.Of(typed)} is too much here: {complete}.");
}

namespace RigLang.Syntax.Checks.Writing;

public static class InvisibleCharacter
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL135",
        Slug = "invisible-character",
        Severity = Severity.Warning,
        Summary = "A line holds a character that can't be seen, or a blank that isn't a space.",
        Why = "Two names can look alike and differ; a line can show its words in another order than it has them. Such characters come along with text copied from a page or a chat.",
        Bad = "vehicle van\n    wheelbase\u00A02.94 m\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Replace it by a space or take it out.",
    };

    internal static LineFinding Of(TextSpan span, string typed, string replacement) => new(
        Check,
        span,
        replacement.Length > 0 ? $"{Shown.Of(typed)} looks like a space and isn't one; write a space." : $"{Shown.Of(typed)} can't be seen; take it out.",
        [new LineFix(replacement.Length > 0 ? "Write a space" : "Take it out", span, replacement)]);
}

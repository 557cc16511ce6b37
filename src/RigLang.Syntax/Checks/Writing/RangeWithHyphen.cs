namespace RigLang.Syntax.Checks.Writing;

public static class RangeWithHyphen
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL116",
        Slug = "range-with-hyphen",
        Severity = Severity.Error,
        Summary = "A range is written with a hyphen, a dash or a word.",
        Why = "A hyphen is also the minus sign and part of inch fractions (2-5/16). Two dots are neither, and mean the same in every language.",
        Bad = "practice ours\n    limit tongue-ratio 7-10 %\n",
        Good = "practice ours\n    limit tongue-ratio 7 % .. 10 %\n",
        Fix = "Write both ends with their units and two dots between.",
        CanBeAllowed = false,
    };

    internal static LineFinding OfWords(TextSpan span, string written) =>
        new(Check, span, $"A range is written with two dots: {Shown.Of(written)}.", [new LineFix($"Write {written}", span, written)]);

    internal static LineFinding Of(TextSpan span, string low, string high, string unit)
    {
        var behind = unit.Length == 0 ? "" : " " + unit;
        var written = $"{low}{behind} .. {high}{behind}";
        return new LineFinding(Check, span, $"A range is written with two dots: {Shown.Of(written)}. For a difference put blanks around the minus.", [new LineFix($"Write {written}", span, written)]);
    }
}

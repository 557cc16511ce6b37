namespace RigLang.Syntax.Checks.Writing;

public static class LanguageNotFirst
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL130",
        Slug = "language-not-first",
        Severity = Severity.Error,
        Summary = "The `language` line isn't the first of its file.",
        Why = "It says how the whole file is to be read, so nothing but comments may stand before it.",
        Bad = "vehicle van\n    wheelbase 2.94 m\nlanguage 1\n",
        Good = "language 1\nvehicle van\n    wheelbase 2.94 m\n",
        Fix = "Move the line to the top of the file, or take it out.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan statement) => new(Check, statement, "The language line is the first of its file; only comments may stand before it.");
}

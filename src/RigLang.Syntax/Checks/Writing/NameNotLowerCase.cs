namespace RigLang.Syntax.Checks.Writing;

public static class NameNotLowerCase
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL124",
        Slug = "name-not-lower-case",
        Severity = Severity.Error,
        Summary = "A word or a name has capital letters.",
        Why = "Names are compared letter by letter; with one case nobody has to remember which letters were large.",
        Bad = "vehicle Van\n    wheelbase 2.94 m\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Write it in small letters. The title in quotes may look as it likes.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string typed, string mended) =>
        new(Check, span, $"Words and names are in small letters: write {Shown.Of(mended)} for {Shown.Of(typed)}.", [new LineFix($"Write {mended}", span, mended)]);
}

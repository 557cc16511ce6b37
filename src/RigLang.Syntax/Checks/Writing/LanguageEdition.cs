namespace RigLang.Syntax.Checks.Writing;

public static class LanguageEdition
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL131",
        Slug = "language-edition",
        Severity = Severity.Error,
        Summary = "The `language` line names no edition that this program knows.",
        Why = "Estimates and practice change over the years. A file of a later edition may mean something else than this program would take it for.",
        Bad = "language 2\n",
        Good = "language 1\n",
        Fix = "Write `language 1`, or take a newer program.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan place, string? edition) => new(
        Check,
        place,
        edition is null ? "Behind `language` stands the edition, a number: language 1." : $"This program knows edition 1 of the language, not {Shown.Of(edition)}; a newer program may.");
}

namespace RigLang.Syntax.Checks.Writing;

public static class OtherQuotes
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL107",
        Slug = "other-quotes",
        Severity = Severity.Error,
        Summary = "A text stands in other quotes than straight double ones.",
        Why = "Word processors and telephones turn quotes into pairs of their own, and single quotes are feet in the trade. One kind keeps files alike.",
        Bad = "vehicle van \u201CElectric people carrier\u201D\n",
        Good = "vehicle van \"Electric people carrier\"\n",
        Fix = "Write straight double quotes around the text.",
        CanBeAllowed = false,
    };

    /// <summary>The quote that closes what <paramref name="opening"/> opens, or none.</summary>
    internal static string ClosingFor(char opening) => opening switch
    {
        '\u201C' => "\u201D\u201C",
        '\u201D' => "\u201D",
        '\u201E' => "\u201C\u201D",
        '\u00AB' => "\u00BB",
        '\u00BB' => "\u00AB",
        '\'' => "'",
        '\u2018' => "\u2019",
        '\u201A' => "\u2018\u2019",
        _ => "",
    };

    internal static LineFinding Of(TextSpan text, string value)
    {
        const string message = "Text is written between straight double quotes (\").";
        return value.Contains('"', StringComparison.Ordinal)
            ? new LineFinding(Check, text, message)
            : new LineFinding(Check, text, message, [new LineFix("Use straight double quotes", text, $"\"{value}\"")]);
    }
}

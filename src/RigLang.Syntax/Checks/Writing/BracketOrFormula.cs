using System.Buffers;

namespace RigLang.Syntax.Checks.Writing;

public static class BracketOrFormula
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL134",
        Slug = "bracket-or-formula",
        Severity = Severity.Error,
        Summary = "A line has a bracket or a sign of arithmetic that it can't have.",
        Why = "A value is what was weighed or measured, or a plain sum of such. Formulas hide where a number came from.",
        Bad = "load autumn\n    on trailer\n        item gas 2 * 9 kg at coupling\n",
        Good = "load autumn\n    on trailer\n        item gas 2 x 9 kg at coupling\n",
        Fix = "Write the value, a sum (`75 lb + 60 lb`) or a count (`2 x 9 kg`). Notes go behind `#`.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(TextSpan span, string typed)
    {
        var message = $"{Shown.Of(typed)} has no meaning here: values are single quantities or plain sums such as 2 x 11 kg + 4 kg. A remark goes behind #.";
        return Bare(typed) is { } bare ? new LineFinding(Check, span, message, [new LineFix("Take the brackets out", span, bare)]) : new LineFinding(Check, span, message);
    }

    private static readonly SearchValues<char> Binding = SearchValues.Create("()[]{}+*/,;");

    /// <summary>A word or a single value without its brackets; null where they bind something together.</summary>
    private static string? Bare(string typed)
    {
        var close = typed.AsSpan().LastIndexOfAny(')', ']', '}');
        if (typed.Length > 60 || close < 2)
        {
            return null;
        }

        var inside = typed[1..close].Trim();
        return inside.Length > 0 && !inside.AsSpan().ContainsAny(Binding) && !inside.Contains(" - ", StringComparison.Ordinal) ? inside + typed[(close + 1)..] : null;
    }

    internal static LineFinding OfTimes(TextSpan span) => new(Check, span, "Several of the same are counted with x: 2 x 9 kg.", [new LineFix("Write x", span, "x")]);
}

using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class IndentMatchesNothing
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL102",
        Slug = "indent-matches-nothing",
        Severity = Severity.Error,
        Summary = "A line has an indent that the lines around it have not.",
        Why = "The indent says what a fact belongs to. Between two levels it belongs to neither, and the wrong axle could get the load.",
        Bad = "vehicle van\n    axle front\n        carries 1195 kg\n      track-width 1.63 m\n",
        Good = "vehicle van\n    axle front\n        carries 1195 kg\n        track-width 1.63 m\n",
        Fix = "Give the line the indent of the lines that it belongs with.",
        CanBeAllowed = false,
    };

    internal static LineFinding Of(LineSyntax line, int siblingColumn, int parentColumn)
    {
        var indent = new TextSpan(0, line.IndentLength);
        var first = new LineFix($"Indent by {siblingColumn}", indent, new string(' ', siblingColumn));
        var place = line.Statement!.Span;
        var message = parentColumn > 0
            ? $"This line stands in column {line.IndentColumns}, where nothing above it does: indent it by {siblingColumn} (with the lines above) or by {parentColumn}."
            : $"This line stands in column {line.IndentColumns}, where nothing above it does: indent it by {siblingColumn}, like the lines above.";
        return parentColumn > 0
            ? new LineFinding(Check, place, message, [first, new LineFix($"Indent by {parentColumn}", indent, new string(' ', parentColumn))])
            : new LineFinding(Check, place, message, [first]);
    }

    /// <summary>A line that makes the others around it look out of place.</summary>
    internal static LineFinding OfMoved(LineSyntax line, int column) =>
        new(Check, line.Statement!.Span, $"This line is indented by {line.IndentColumns}, and the lines around it don't fit so: indent it by {column}.",
            [new LineFix($"Indent by {column}", new TextSpan(0, line.IndentLength), new string(' ', column))]);
}

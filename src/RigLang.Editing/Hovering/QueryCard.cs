using RigLang.Editing.Locating;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Hovering;

/// <summary>A question mark in place of a value.</summary>
internal static class QueryCard
{
    public static CardText Of(Spot spot, QuerySyntax query)
    {
        var card = new CardText().Paragraph("**?** asked and not known");
        if (query.Goal != QueryGoal.None)
        {
            card.Paragraph($"Wanted: the value for which `{spot.Syntax.TextOf(query.Span).TrimStart('?').Trim()}`. It is not solved for yet and counts as not known.");
        }

        return spot.Declared is { } fact ? card.Paragraph(StandIns.For(spot, fact)).Paragraph(fact.Estimate is null ? $"Until it is known: {fact.Else}" : $"Until it is known the estimate stands in, and every result that reads it is marked: {fact.Else}") : card;
    }
}

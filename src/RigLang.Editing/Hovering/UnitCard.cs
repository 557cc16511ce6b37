using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Hovering;

/// <summary>A unit behind a number.</summary>
internal static class UnitCard
{
    public static (TextSpan Span, CardText Text)? At(Spot spot, ArgumentSyntax argument)
    {
        foreach (var token in UnitsIn(argument))
        {
            // Where the unit is glued to its number, the caret between the two is still on the number.
            var isGlued = token.Span.Start > 0 && char.IsAsciiDigit(spot.Syntax.Text[token.Span.Start - 1]);
            if (spot.Position.Character >= token.Span.Start + (isGlued ? 1 : 0) && token.Span.Touches(spot.Position.Character) && Of(spot, token.Text, argument.Span) is { } text)
            {
                return (token.Span, text);
            }
        }

        return null;
    }

    private static CardText? Of(Spot spot, string written, TextSpan argument)
    {
        var measure = spot.Fact?.Values.Values.OfType<MeasureValue>().FirstOrDefault(value => value.Span.Start == argument.Start)?.Measure;
        var unit = measure?.Units.FirstOrDefault(unit => unit.Symbol == written) ?? UnitTable.Find(written);
        if (unit is null)
        {
            return null;
        }

        var card = new CardText().Paragraph(unit.Name == unit.Symbol ? $"**{unit.Symbol}**" : $"**{unit.Symbol}**, {unit.Name}");
        if (measure is null)
        {
            return card;
        }

        card.Paragraph(FactCard.Both(measure));
        var others = measure.Kind.ExampleUnits.Where(other => other != unit).Select(other => other.Symbol);
        return card.Paragraph($"A {measure.Kind.Name} may also be written in {string.Join(", ", others)}");
    }

    private static IEnumerable<Token> UnitsIn(ArgumentSyntax argument) => argument switch
    {
        MeasureSyntax measure => UnitsIn(measure),
        BoundSyntax { Measure: { } measure } => UnitsIn(measure),
        RangeSyntax range => UnitsIn(range.Low).Concat(range.High is { } high ? UnitsIn(high) : []),
        _ => [],
    };

    private static IEnumerable<Token> UnitsIn(MeasureSyntax measure) => measure.Terms.Select(term => term.Quantity).Concat(measure.HalfWidth is { } half ? [half] : [])
        .SelectMany(quantity => quantity.Parts).Select(part => part.Unit).OfType<Token>();
}

using System.Collections.Immutable;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;
using static RigLang.Syntax.Grammar.AtomParsers;

namespace RigLang.Syntax.Grammar;

/// <summary>Numbers with units, and the sums made of them; named as in the grammar of the language page.</summary>
internal static class QuantityGrammar
{
    private static readonly Parser<Token> Unit = Of(AtomKind.Unit);

    // quantity = number, [ [ blank ], unit, { [ blank ], number, [ blank ], unit } ]
    private static readonly Parser<QuantityPartSyntax> Part =
        from number in Of(AtomKind.Number)
        from unit in Unit.Optional()
        select new QuantityPartSyntax(number, unit.OrNull());

    private static readonly Parser<QuantityPartSyntax> SmallerPart =
        from number in Of(AtomKind.SmallerNumber)
        from unit in Unit
        select new QuantityPartSyntax(number, unit);

    public static readonly Parser<QuantitySyntax> Quantity =
        from largest in Part
        from smaller in SmallerPart.Many()
        select Whole([largest, .. smaller]);

    // product = [ number, blank, ( "x" | "×" ), blank ], quantity
    private static readonly Parser<Token> Count =
        from count in Of(AtomKind.Count)
        from times in Of(AtomKind.Times)
        select count;

    private static readonly Parser<TermSyntax> Product =
        from count in Count.Optional()
        from quantity in Quantity
        select new TermSyntax(TextSpan.FromBounds(count.OrNull()?.Span.Start ?? quantity.Span.Start, quantity.Span.End), false, count.OrNull(), quantity);

    // sum = product, { blank, ( "+" | "-" ), blank, product }
    private static readonly Parser<TermSyntax> FurtherProduct =
        (from sign in Of(AtomKind.Plus)
         from product in Product
         select product)
        .Or(from sign in Of(AtomKind.Minus)
            from product in Product
            select product with { Span = TextSpan.FromBounds(sign.Span.Start, product.Span.End), IsNegative = true });

    // measure = sum, [ blank, ( "±" | "+-" ), blank, quantity ]
    private static readonly Parser<QuantitySyntax> HalfWidth =
        from sign in Of(AtomKind.PlusMinus)
        from quantity in Quantity
        select quantity;

    public static readonly Parser<MeasureSyntax> Measure =
        from first in Product
        from further in FurtherProduct.Many()
        from halfWidth in HalfWidth.Optional()
        select Sum([first, .. further], halfWidth.OrNothing());

    // range = measure, blank, "..", blank, measure
    public static readonly Parser<RangeSyntax> FullRange =
        from low in Measure
        from dots in Of(AtomKind.Dots)
        from high in Measure.Optional()
        select Between(low, dots, high.OrNothing());

    private static readonly Parser<(Token Dots, MeasureSyntax? High)> UpperEnd =
        from dots in Of(AtomKind.Dots)
        from high in Measure.Optional()
        select (dots, high.OrNothing());

    /// <summary>Range and measure begin alike; read together, neither is read twice.</summary>
    public static readonly Parser<ArgumentSyntax> RangeOrMeasure =
        from low in Measure
        from end in UpperEnd.Optional()
        select end.IsDefined ? Between(low, end.Get().Dots, end.Get().High) : (ArgumentSyntax)low;

    private static RangeSyntax Between(MeasureSyntax low, Token dots, MeasureSyntax? high) =>
        new(TextSpan.FromBounds(low.Span.Start, high?.Span.End ?? dots.Span.End), low, high);

    private static QuantitySyntax Whole(ImmutableArray<QuantityPartSyntax> parts)
    {
        var last = parts[^1];
        return new QuantitySyntax(TextSpan.FromBounds(parts[0].Number.Span.Start, (last.Unit ?? last.Number).Span.End), parts);
    }

    private static MeasureSyntax Sum(ImmutableArray<TermSyntax> terms, QuantitySyntax? halfWidth) =>
        new(TextSpan.FromBounds(terms[0].Span.Start, halfWidth?.Span.End ?? terms[^1].Span.End), terms, halfWidth);
}

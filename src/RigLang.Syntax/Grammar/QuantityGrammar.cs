using System.Collections.Immutable;
using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;
using Sprache;
using static RigLang.Syntax.Grammar.AtomParsers;

namespace RigLang.Syntax.Grammar;

/// <summary>Numbers with units, and the sums made of them; named as in the grammar of the language page.</summary>
internal static class QuantityGrammar
{
    // quantity = number, [ [ blank ], unit, { [ blank ], number, [ blank ], unit } ]
    private static readonly Parser<QuantityPartSyntax> Part =
        from number in Of(AtomKind.Number)
        from unit in If(AtomKind.Unit)
        select new QuantityPartSyntax(number, unit);

    private static readonly Parser<QuantityPartSyntax> SmallerPart =
        from number in Of(AtomKind.SmallerNumber)
        from unit in Of(AtomKind.Unit)
        select new QuantityPartSyntax(number, unit);

    public static readonly Parser<QuantitySyntax> Quantity =
        from largest in Part
        from smaller in AllOn(static kind => kind == AtomKind.SmallerNumber, SmallerPart)
        select Whole(smaller.Insert(0, largest));

    // product = [ number, blank, ( "x" | "×" ), blank ], quantity
    private static readonly Parser<TermSyntax> Single =
        from quantity in Quantity
        select new TermSyntax(quantity.Span, false, null, quantity);

    private static readonly Parser<TermSyntax> Several =
        from count in Of(AtomKind.Count)
        from times in Of(AtomKind.Times)
        from quantity in Quantity
        select new TermSyntax(TextSpan.FromBounds(count.Span.Start, quantity.Span.End), false, count, quantity);

    private static readonly Parser<TermSyntax> Product = Choice(static kind => kind == AtomKind.Count ? Several : null, otherwise: Single);

    // sum = product, { blank, ( "+" | "-" ), blank, product }
    private static readonly Parser<TermSyntax> Added =
        from sign in Of(AtomKind.Plus)
        from product in Product
        select product;

    private static readonly Parser<TermSyntax> TakenOff =
        from sign in Of(AtomKind.Minus)
        from product in Product
        select product with { Span = TextSpan.FromBounds(sign.Span.Start, product.Span.End), IsNegative = true };

    private static readonly Parser<ImmutableArray<TermSyntax>> FurtherProducts =
        AllOn(static kind => kind is AtomKind.Plus or AtomKind.Minus, Choice(static kind => kind == AtomKind.Minus ? TakenOff : null, otherwise: Added));

    // measure = sum, [ blank, ( "±" | "+-" ), blank, quantity ]
    private static readonly Parser<QuantitySyntax> HalfWidth =
        from sign in Of(AtomKind.PlusMinus)
        from quantity in Quantity
        select quantity;

    public static readonly Parser<MeasureSyntax> Measure =
        from first in Product
        from further in FurtherProducts
        from halfWidth in If(AtomKind.PlusMinus, HalfWidth)
        select Sum(further.Insert(0, first), halfWidth);

    public static readonly Parser<MeasureSyntax?> IfMeasure =
        Choice(static kind => kind is AtomKind.Number or AtomKind.Count ? Measure : null, otherwise: Parse.Return<MeasureSyntax?>(null));

    // range = measure, blank, "..", blank, measure                           (an upper end that isn't there is null, and reported)
    public static readonly Parser<RangeSyntax> FullRange =
        from low in Measure
        from dots in Of(AtomKind.Dots)
        from high in IfMeasure
        select new RangeSyntax(TextSpan.FromBounds(low.Span.Start, high?.Span.End ?? dots.Span.End), low, high);

    private static readonly Parser<UpperEnd> RangeEnd =
        from dots in Of(AtomKind.Dots)
        from high in IfMeasure
        select new UpperEnd(dots, high);

    /// <summary>Range and measure begin alike; read together, neither is read twice.</summary>
    public static readonly Parser<ArgumentSyntax> RangeOrMeasure =
        from low in Measure
        from end in If(AtomKind.Dots, RangeEnd)
        select end is null ? (ArgumentSyntax)low : new RangeSyntax(TextSpan.FromBounds(low.Span.Start, end.High?.Span.End ?? end.Dots.Span.End), low, end.High);

    private static QuantitySyntax Whole(ImmutableArray<QuantityPartSyntax> parts)
    {
        var last = parts[^1];
        return new QuantitySyntax(TextSpan.FromBounds(parts[0].Number.Span.Start, (last.Unit ?? last.Number).Span.End), parts);
    }

    private static MeasureSyntax Sum(ImmutableArray<TermSyntax> terms, QuantitySyntax? halfWidth) =>
        new(TextSpan.FromBounds(terms[0].Span.Start, halfWidth?.Span.End ?? terms[^1].Span.End), terms, halfWidth);

    private sealed record UpperEnd(Token Dots, MeasureSyntax? High);
}

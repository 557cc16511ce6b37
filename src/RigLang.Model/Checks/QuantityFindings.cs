using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Checks.Units;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Checks;

/// <summary>Turns what the quantity reader found into findings with a place in the line.</summary>
internal static class QuantityFindings
{
    public static Finding Of(QuantityProblem problem, MeasureSyntax syntax, Place line)
    {
        var place = line with { Span = SpanOf(problem.Place, syntax) };
        return new Finding(CheckOf(problem), place, Phrase.Sentence(problem.Message))
        {
            Fixes = [.. problem.Fixes.Select(fix => new Fix($"Write `{fix.NewText}`", line with { Span = SpanOf(fix.Place, syntax) }, fix.NewText))],
        };
    }

    private static CheckDeclaration CheckOf(QuantityProblem problem) => problem switch
    {
        { IsError: false } => WrittenUnusually.Declaration,
        { Unit.Kind: UnitProblemKind.Missing } => UnitMissing.Declaration,
        { Unit.Kind: UnitProblemKind.Ambiguous } => UnitAmbiguous.Declaration,
        { Unit.Kind: UnitProblemKind.CaseSlip or UnitProblemKind.OtherSpelling } => UnitSpeltOtherwise.Declaration,
        { Unit.Kind: UnitProblemKind.WrongDimension } => UnitOfSomethingElse.Declaration,
        { Unit.Kind: UnitProblemKind.MassForForce or UnitProblemKind.ForceForMass } => MassOrForce.Declaration,
        { Unit.Kind: UnitProblemKind.NotWanted } => UnitNotWanted.Declaration,
        { Unit: not null } => UnitUnknown.Declaration,
        { Kind: QuantityProblemKind.Compound or QuantityProblemKind.Sum or QuantityProblemKind.HalfWidth } => SumUnclear.Declaration,
        _ => NumberWithoutValue.Declaration,
    };

    private static TextSpan SpanOf(QuantityPlace place, MeasureSyntax syntax)
    {
        if (place.Spot == QuantitySpot.Whole && !place.IsHalfWidth)
        {
            return syntax.Span;
        }

        var quantity = place.IsHalfWidth ? syntax.HalfWidth : At(syntax.Terms, place.Term)?.Quantity;
        if (place.Spot == QuantitySpot.Count && !place.IsHalfWidth && At(syntax.Terms, place.Term)?.Count is { } count)
        {
            return count.Span;
        }

        if (quantity is null || At(quantity.Parts, place.Part) is not { } part)
        {
            return quantity?.Span ?? syntax.Span;
        }

        return place.Spot switch
        {
            QuantitySpot.Number => part.Number.Span,
            QuantitySpot.Unit => part.Unit?.Span ?? part.Number.Span,
            QuantitySpot.Part => TextSpan.FromBounds(part.Number.Span.Start, part.Unit?.Span.End ?? part.Number.Span.End),
            _ => quantity.Span,
        };
    }

    private static T? At<T>(ImmutableArray<T> items, int index)
        where T : class => index >= 0 && index < items.Length ? items[index] : null;
}

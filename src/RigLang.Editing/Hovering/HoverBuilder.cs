using RigLang.Analysis.Checks;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Navigating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Hovering;

/// <summary>Decides what a hover is about; each sort of thing has a card of its own.</summary>
internal static class HoverBuilder
{
    public static HoverCard? At(Spot spot, CancellationToken cancel)
    {
        if (spot.Syntax.Comment is { } comment && spot.Position.Character >= comment.Start)
        {
            return null;
        }

        return spot.Syntax.Statement switch
        {
            OpeningSyntax opening when spot.Linked is { } declaration => OfOpening(spot, opening, declaration, cancel),
            UseSyntax { Path: { } path } => Card(spot, path.Span, FileCard.Of(spot)),
            FactSyntax fact => OfFact(spot, fact, cancel),
            _ => null,
        };
    }

    private static HoverCard? OfOpening(Spot spot, OpeningSyntax opening, Declaration declaration, CancellationToken cancel)
    {
        var at = spot.Position.Character;
        if (opening.LikeKeyword is { } like && like.Span.Touches(at) && declaration.Parent is not null)
        {
            return Card(spot, like.Span, LikeCard.Of(spot.View, declaration));
        }

        if (opening.Parent is { } parent && parent.Span.Touches(at))
        {
            return declaration.Parent is { } found ? Card(spot, parent.Span, DeclarationCard.Of(spot.View, found, cancel)) : null;
        }

        var span = opening.Name is { } name && name.Span.Touches(at) ? name.Span : opening.Kind.Span.Touches(at) ? opening.Kind.Span : opening.Title?.Span ?? opening.Kind.Span;
        return span.Touches(at) ? Card(spot, span, DeclarationCard.Of(spot.View, declaration, cancel)) : null;
    }

    private static HoverCard? OfFact(Spot spot, FactSyntax syntax, CancellationToken cancel)
    {
        if (spot.Declared is not { } declared)
        {
            return null;
        }

        if (spot.IsOnKeyword)
        {
            return Card(spot, syntax.Keyword.Span, OfLine(spot, declared, cancel));
        }

        if (spot.Argument is not { } argument)
        {
            return null;
        }

        return OfName(spot, argument, cancel) ?? OfPart(spot, argument) ?? Card(spot, argument.Span, OfLine(spot, declared, cancel));
    }

    /// <summary>A name stands for something with a card of its own.</summary>
    private static HoverCard? OfName(Spot spot, ArgumentSyntax argument, CancellationToken cancel)
    {
        if (argument is WordSyntax word && SlotOf(spot, word.Span)?.Form is var form)
        {
            var text = form switch
            {
                ResultNameForm when spot.Declared == PracticeFacts.Assume => Practice.AssumedFact(word.Text) is { } fact ? FactCard.OfKeyword(fact) : null,
                ResultNameForm => Catalogue.FindResult(word.Text) is { } result ? ResultCard.Of(spot, result) : null,
                CheckNameForm => AnalysisChecks.Find(word.Text) is { } check ? CheckCard.Of(check) : null,
                PositionForm => PointCard.Of(spot, word),
                KeywordForm => spot.Linked is { } declaration && Vocabulary.FindInKind(declaration.Kind, word.Text) is { } taken ? FactCard.OfKeyword(taken) : null,
                _ => null,
            };
            if (text is not null)
            {
                return Card(spot, word.Span, text);
            }
        }

        foreach (var found in Navigator.At(spot).Where(found => !found.IsDeclaration))
        {
            if (SymbolCard.Of(spot.View, found.Symbol, cancel) is { } card)
            {
                return Card(spot, found.Place.Span, card);
            }
        }

        return null;
    }

    /// <summary>A question, or a unit inside a quantity.</summary>
    private static HoverCard? OfPart(Spot spot, ArgumentSyntax argument)
    {
        if (argument is QuerySyntax query)
        {
            return query.Result is { } name && name.Span.Touches(spot.Position.Character) && Catalogue.FindResult(name.Text) is { } result
                ? Card(spot, name.Span, ResultCard.Of(spot, result))
                : Card(spot, query.Span, QueryCard.Of(spot, query));
        }

        return UnitCard.At(spot, argument) is var (span, text) ? Card(spot, span, text) : null;
    }

    private static CardText? OfLine(Spot spot, FactDeclaration declared, CancellationToken cancel) =>
        spot.Fact is { } line && (BlockCard.Of(spot, line, cancel) ?? ItemCard.Of(spot, line, cancel) ?? OfTest(spot, line)) is { } card ? card : FactCard.Of(spot, declared);

    /// <summary>An expectation or limit is about its result.</summary>
    private static CardText? OfTest(Spot spot, Fact line) => Bound.Read(line) is { } bound ? ResultCard.Of(spot, bound.Result) : null;

    private static Slot? SlotOf(Spot spot, TextSpan span) =>
        spot.Declared?.Signature.Slots.FirstOrDefault(slot => spot.Fact?.Values.TryGetValue(slot.Role, out var value) == true && value.Span.Start <= span.Start && value.Span.End >= span.End);

    private static HoverCard? Card(Spot spot, TextSpan span, CardText? text) => text is null || text.IsEmpty ? null : new HoverCard(spot.RangeOf(span), text.ToString());
}

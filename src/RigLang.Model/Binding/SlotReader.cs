using System.Collections.Immutable;
using RigLang.Model.Checks;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Checks.Units;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>
/// Reads what one slot asks for from the next arguments. Null without a finding means that the argument is something else, for the next slot perhaps;
/// null with a finding means that it was meant for this slot and is wrong.
/// </summary>
public static class SlotReader
{
    internal static SlotValue? Read(LineReading line, Slot slot) => (slot.Form, line.Next) switch
    {
        (_, null) => null,
        (PositionForm, _) => PositionReader.Read(line),
        (KeywordForm, _) => ReadKeyword(line),
        (ScaledAxlesForm, _) => ReadWords(line),
        (QuantityForm or QuantityOrNoneForm, QuerySyntax query) => Take(line, new QueryValue(query.Span, query)),
        (QuantityForm form, MeasureSyntax measure) => ReadMeasure(line, measure, form.Kinds),
        (QuantityOrNoneForm form, MeasureSyntax measure) => ReadMeasure(line, measure, [form.Kind]),
        (QuantityOrNoneForm, WordSyntax { Text: "none" } word) => Take(line, new AbsentValue(word.Span)),
        (ChoiceForm form, WordSyntax word) => ReadChoice(line, form, word),
        (NameForm or ReferenceForm or LocalNameForm or ResultNameForm or CheckNameForm, WordSyntax word) => Take(line, new WordValue(word.Span, word.Text)),
        (TextForm or PathForm, TextSyntax text) => Take(line, new TextValue(text.Span, text.Value)),
        (TyreForm, TyreSyntax tyre) => ReadTyre(line, tyre),
        (MomentForm form, MomentSyntax moment) => MomentSlot.Read(line, form.Shape, moment),
        (BoundForm, BoundSyntax or RangeSyntax) => Take(line, new RawValue(line.Next!.Span, line.Next)),
        (AnyValueForm, MeasureSyntax or WordSyntax) => Take(line, new RawValue(line.Next!.Span, line.Next)),
        _ => null,
    };

    /// <summary>Reads the arguments of a measure as one of the kinds; null and findings when that can't be.</summary>
    internal static MeasureValue? ReadMeasure(LineReading line, MeasureSyntax syntax, ImmutableArray<QuantityKind> kinds)
    {
        line.Advance();
        var reading = ReadMeasure(syntax, kinds);
        foreach (var problem in reading.Problems)
        {
            line.Findings.Add(QuantityFindings.Of(problem, syntax, line.PlaceOf(syntax.Span)));
        }

        return reading.Measure is { } measure ? new MeasureValue(syntax.Span, measure) : null;
    }

    /// <summary>Reads a measure of the tree, wherever it stands.</summary>
    public static MeasureReading ReadMeasure(MeasureSyntax syntax, ImmutableArray<QuantityKind> kinds) =>
        MeasureReader.Read([.. syntax.Terms.Select(Term)], syntax.HalfWidth is { } half ? Parts(half) : null, kinds);

    private static QuantityTerm Term(TermSyntax term) => new(term.IsNegative, term.Count?.Text, Parts(term.Quantity));

    private static QuantityPart[] Parts(QuantitySyntax quantity) => [.. quantity.Parts.Select(part => new QuantityPart(part.Number.Text, part.Unit?.Text))];

    private static SlotValue Take(LineReading line, SlotValue value)
    {
        line.Advance();
        return value;
    }

    private static WordValue? ReadChoice(LineReading line, ChoiceForm form, WordSyntax word)
    {
        if (form.Choices.Contains(word.Text))
        {
            line.Advance();
            return new WordValue(word.Span, word.Text);
        }

        return null;
    }

    private static TyreValue? ReadTyre(LineReading line, TyreSyntax tyre)
    {
        line.Advance();
        // A tyre that can't be read was reported by whoever read the line.
        return tyre.Size is { } size ? new TyreValue(tyre.Span, size, tyre.Service, [.. tyre.Marks.Select(mark => mark.Text)]) : null;
    }

    private static WordsValue? ReadWords(LineReading line)
    {
        var words = new List<string>();
        var (start, end) = (-1, -1);
        while (line.Next is WordSyntax word)
        {
            start = start < 0 ? word.Span.Start : start;
            end = word.Span.End;
            words.Add(word.Text);
            line.Advance();
        }

        return words.Count == 0 ? null : new WordsValue(TextSpan.FromBounds(start, end), words);
    }

    private static WordsValue? ReadKeyword(LineReading line)
    {
        if (line.Next is not WordSyntax first)
        {
            return null;
        }

        var words = new List<string> { first.Text };
        var end = first.Span.End;
        line.Advance();
        while (line.Next is { } more)
        {
            words.Add(line.TextOf(more.Span));
            end = more.Span.End;
            line.Advance();
        }

        return new WordsValue(TextSpan.FromBounds(first.Span.Start, end), words);
    }
}

using System.Collections.Immutable;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Checks.Units;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>Reads one line by its fact's signature: the slots in order, then the phrases in any order; what is left over is marked by itself.</summary>
internal static class FactReader
{
    public static Fact Read(FactDeclaration fact, FactSyntax syntax, Place place, List<Finding> findings)
    {
        var line = new LineReading(fact, syntax, place, []);
        var values = ImmutableDictionary.CreateBuilder<string, SlotValue>(StringComparer.Ordinal);
        foreach (var slot in fact.Signature.Slots.Where(slot => slot.Lead is null))
        {
            ReadSlot(line, slot, values);
        }

        ReadPhrases(line, values);
        Judge(fact, place, values, line.Findings);
        findings.AddRange(WithoutConsequences(line));
        return new Fact(fact, place, values.ToImmutable(), KeyOf(fact, values, line));
    }

    /// <summary>Once something on the line isn't understood, that something else is missing, misplaced or left over mostly follows from it.</summary>
    private static IEnumerable<Finding> WithoutConsequences(LineReading line)
    {
        var isUnclear = line.IsMiswritten;
        foreach (var finding in line.Findings)
        {
            var isOfShape = finding.Check == ValueMissing.Declaration || finding.Check == WrongForm.Declaration || finding.Check == ArgumentLeftOver.Declaration;
            if (!(isOfShape && isUnclear) && !(finding.Check == UnitMissing.Declaration && line.IsMiswrittenBehind(finding.Place.Span)))
            {
                yield return finding;
            }

            isUnclear |= isOfShape || finding.Severity == Severity.Error;
        }
    }

    private static void ReadSlot(LineReading line, Slot slot, ImmutableDictionary<string, SlotValue>.Builder values)
    {
        var before = line.Findings.Count;
        var next = line.Next;
        if (SlotReader.Read(line, slot) is { } value)
        {
            values[slot.Role] = value;
            return;
        }

        if (slot.IsOptional || line.Findings.Count > before)
        {
            return;
        }

        if (ReferenceEquals(next, line.Next) && (next is null || IsLead(line.Fact, next)))
        {
            line.Findings.Add(ValueMissing.Report(line.PlaceOfMissing, line.Fact, slot));
            return;
        }

        if (ReferenceEquals(next, line.Next))
        {
            line.Advance();
            // Stray text and half-read tyres were reported when the line was read.
            if (next is not StraySyntax)
            {
                line.Findings.Add(slot.Form is BoundForm && next is MeasureSyntax { Terms: [var low, { IsNegative: true } high], HalfWidth: null }
                    ? WrongForm.ReportRange(line.PlaceOf(next.Span), line.Fact, EndOf(line, low, high), EndOf(line, high, low))
                    : WrongForm.Report(line.PlaceOf(next!.Span), line.Fact, slot));
            }
        }
    }

    /// <summary>One end of a range, with the other's unit if it has none.</summary>
    private static string EndOf(LineReading line, TermSyntax term, TermSyntax other)
    {
        var text = line.TextOf(term.Quantity.Span);
        return term.Quantity.Parts[^1].Unit is null && other.Quantity.Parts[^1].Unit is { } unit ? $"{text} {unit.Text}" : text;
    }

    private static bool IsLead(FactDeclaration fact, ArgumentSyntax argument) =>
        argument is WordSyntax word && fact.Signature.Slots.Any(slot => slot.Lead == word.Text);

    private static void ReadPhrases(LineReading line, ImmutableDictionary<string, SlotValue>.Builder values)
    {
        var open = line.Fact.Signature.Slots.Where(slot => slot.Lead is not null).ToList();
        var leftOver = new List<ArgumentSyntax>();
        while (line.Next is { } next)
        {
            var slot = next is WordSyntax word ? open.FirstOrDefault(slot => slot.Lead == word.Text) : null;
            line.Advance();
            if (slot is not null)
            {
                open.Remove(slot);
                ReadSlot(line, slot with { IsOptional = false }, values);
            }
            else if (next is not StraySyntax)
            {
                leftOver.Add(next);
            }
        }

        var missing = open.Where(slot => !slot.IsOptional).ToList();
        var rest = leftOver.Count == 0 ? default : TextSpan.FromBounds(leftOver[0].Span.Start, leftOver[^1].Span.End);
        if (missing is [var only] && leftOver is [MeasureSyntax, ..])
        {
            line.Findings.Add(ValueMissing.ReportLead(line.PlaceOf(rest), line.Fact, only));
        }
        else if (missing.Count > 0)
        {
            line.Findings.Add(ValueMissing.Report(leftOver.Count > 0 ? line.PlaceOf(rest) : line.PlaceOfMissing, line.Fact, missing[0]));
        }
        else if (leftOver.Count > 0)
        {
            line.Findings.Add(ArgumentLeftOver.Report(line.PlaceOf(rest), line.Fact));
        }
    }

    /// <summary>A value that can't be is taken away again, so that no result rests on it; one that is merely unlikely stays.</summary>
    private static void Judge(FactDeclaration fact, Place line, ImmutableDictionary<string, SlotValue>.Builder values, List<Finding> findings)
    {
        foreach (var written in values.Values.OfType<MeasureValue>().Where(written => HalfWidthOverValue.Applies(fact, written.Measure)))
        {
            findings.Add(HalfWidthOverValue.Report(line with { Span = written.Span }, fact, written.Measure));
        }

        if (values.GetValueOrDefault("mass") is MeasureValue { Measure.Value: < 0 } less)
        {
            findings.Add(MustBePositive.Report(line with { Span = less.Span }, fact, less.Measure));
            values.Remove("mass");
        }

        if (!values.TryGetValue(Signature.ValueRole, out var value) || value is not MeasureValue { Measure: var measure })
        {
            return;
        }

        var place = line with { Span = value.Span };
        if (fact.MustBePositive && !(measure.Value > 0))
        {
            findings.Add(MustBePositive.Report(place, fact, measure));
            values.Remove(Signature.ValueRole);
        }
        else if (fact.Plausible is { } range)
        {
            if (measure.Kind == QuantityKinds.Ratio && range.High <= 1 && Limits.Exceeds(measure.Value, 1))
            {
                findings.Add(RatioAboveRange.Report(place, fact, measure));
                values.Remove(Signature.ValueRole);
            }
            else if (Limits.FallsBelow(measure.Value, range.Low) || Limits.Exceeds(measure.Value, range.High))
            {
                findings.Add(MagnitudeUnlikely.Report(place, fact, measure, range));
            }
        }
    }

    private static string KeyOf(FactDeclaration fact, ImmutableDictionary<string, SlotValue>.Builder values, LineReading line) =>
        fact.KeyRoles.IsEmpty
            ? ""
            : string.Join(" ", fact.KeyRoles.Select(role => values.TryGetValue(role, out var value) ? KeyText(value, line) : "").Where(text => text.Length > 0));

    private static string KeyText(SlotValue value, LineReading line) => value switch
    {
        WordValue word => word.Word,
        WordsValue words => string.Join(" ", words.Words),
        TextValue text => $"\"{text.Text}\"",
        MeasureValue measure => measure.Measure.Text,
        _ => line.TextOf(value.Span),
    };
}

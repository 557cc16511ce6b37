using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>What may stand behind a keyword, by its signature.</summary>
internal static class ValueCompleter
{
    public static void Add(Entries entries, LineCaret caret, OpenBlock open, FactDeclaration fact, CancellationToken cancel)
    {
        var before = caret.Before!.Arguments;
        var walk = SlotWalk.Along(fact.Signature, before);
        if (before is [.., QuerySyntax query])
        {
            AddQuery(entries, caret, query);
            return;
        }

        if (LastQuantity(before) is { Parts: [.., { Unit: null }] })
        {
            entries.AddUnits(KindsOf(walk.Last, fact, before));
        }

        if (caret.IsGlued)
        {
            return;
        }

        foreach (var slot in walk.Next)
        {
            AddSlot(entries, caret, open, fact, slot, cancel);
        }

        if (walk.WantsPoint)
        {
            NameCompleter.AddPoints(entries, caret, open);
        }

        foreach (var lead in walk.Leads)
        {
            entries.Add(lead, CompletionSort.Choice, WordsOf(fact, lead), insert: lead + " ", rank: '3');
        }
    }

    private static void AddSlot(Entries entries, LineCaret caret, OpenBlock open, FactDeclaration fact, Slot slot, CancellationToken cancel)
    {
        switch (slot.Form)
        {
            case ChoiceForm choice:
                entries.AddChoices(choice, fact, slot.IsOptional);
                break;
            case QuantityOrNoneForm:
                AddQuestion(entries, fact);
                entries.Add("none", CompletionSort.Choice, "known to be absent");
                break;
            case QuantityForm when slot.Lead is null && slot.Role == Signature.ValueRole:
                AddQuestion(entries, fact);
                break;
            case ReferenceForm reference:
                NameCompleter.AddDeclarations(entries, caret, reference.Kind);
                break;
            case LocalNameForm local:
                NameCompleter.AddLocals(entries, caret, open, local.Of);
                break;
            case ScaledAxlesForm:
                NameCompleter.AddScaled(entries, caret);
                break;
            case KeywordForm:
                NameCompleter.AddInherited(entries, caret, open);
                break;
            case ResultNameForm when fact == PracticeFacts.Assume:
                AddAssumable(entries);
                break;
            case ResultNameForm:
                NameCompleter.AddResults(entries, caret, open);
                break;
            case CheckNameForm:
                NameCompleter.AddChecks(entries, caret, cancel);
                break;
            case TextForm:
                entries.Add("\"\"", CompletionSort.Value, slot.Form.Words, insert: "\"$1\"", isSnippet: true);
                break;
        }
    }

    private static void AddQuestion(Entries entries, FactDeclaration fact) =>
        entries.Add("?", CompletionSort.Value, "asked and not known", fact.Estimate is { } estimate ? $"Until it is known: {estimate.Words}" : "", rank: '7');

    private static void AddQuery(Entries entries, LineCaret caret, QuerySyntax query)
    {
        switch (query)
        {
            case { Goal: QueryGoal.None }:
                entries.Add("for", CompletionSort.Choice, "the value for which a result is reached", insert: "for ");
                entries.Add("least", CompletionSort.Choice, "the value that makes a result least", insert: "least ");
                entries.Add("most", CompletionSort.Choice, "the value that makes a result most", insert: "most ");
                break;
            case { Result: null }:
                foreach (var result in Catalogue.Results)
                {
                    entries.Add(result.Name, CompletionSort.Result, result.Title, result.Meaning);
                }

                break;
            default:
                if (query.Target is { Terms: [.., { Quantity.Parts: [.., { Unit: null }] }] } && Catalogue.FindResult(query.Result.Value.Text) is { } wanted)
                {
                    entries.AddUnits([wanted.Kind]);
                }

                if (query.Within is null && !caret.IsGlued)
                {
                    entries.Add("within", CompletionSort.Choice, "the range to look in", insert: "within ");
                }

                break;
        }
    }

    private static void AddAssumable(Entries entries)
    {
        foreach (var fact in Vocabulary.Assumable)
        {
            entries.Add(fact.Keyword, CompletionSort.Fact, fact.Meaning, fact.Else);
        }
    }

    /// <summary>The quantity that stands last before the caret.</summary>
    private static QuantitySyntax? LastQuantity(ImmutableArray<ArgumentSyntax> arguments) => arguments.IsEmpty ? null : arguments[^1] switch
    {
        MeasureSyntax measure => LastOf(measure),
        RangeSyntax range => LastOf(range.High ?? range.Low),
        BoundSyntax { Measure: { } measure } => LastOf(measure),
        _ => null,
    };

    private static QuantitySyntax? LastOf(MeasureSyntax measure) => measure.HalfWidth ?? measure.Terms.LastOrDefault()?.Quantity;

    private static ImmutableArray<QuantityKind> KindsOf(Slot? slot, FactDeclaration fact, ImmutableArray<ArgumentSyntax> arguments) => slot?.Form switch
    {
        QuantityForm form => form.Kinds,
        QuantityOrNoneForm form => [form.Kind],
        PositionForm => [QuantityKinds.Length],
        AnyValueForm when slot.Lead == "at" => [QuantityKinds.Speed],
        BoundForm or AnyValueForm when arguments is [WordSyntax name, ..] => fact == PracticeFacts.Assume
            ? Practice.AssumedFact(name.Text)?.Kind is { } kind ? [kind] : []
            : Catalogue.FindResult(name.Text) is { } result ? [result.Kind] : [],
        _ => [],
    };

    private static string WordsOf(FactDeclaration fact, string lead) =>
        fact.Signature.Slots.FirstOrDefault(slot => slot.Lead == lead) is { } slot ? slot.Form.Words : lead == "behind" ? "towards the rear of a point" : "towards the front of a point";
}

using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Editing.Reference;

/// <summary>The words of the language by how an editor colours them. Every keyword is in exactly one of the lists of facts.</summary>
internal static class GrammarWords
{
    // The words inside a position and around a question; all others are the leads of declared phrases.
    private static readonly string[] Joints = ["behind", "ahead", "of", "for", "least", "most", "within", "like"];

    private static readonly ImmutableArray<FactDeclaration> Facts = [.. Vocabulary.Blocks.SelectMany(block => block.Facts).Concat(EverywhereFacts.Block.Facts)];

    public static IReadOnlyDictionary<string, IEnumerable<string>> ByName { get; } = new Dictionary<string, IEnumerable<string>>
    {
        ["kinds"] = DeclarationKinds.All.Select(kind => kind.Keyword()),
        ["tyreFacts"] = Keywords(FactSort.Tyre),
        ["namedBlocks"] = Keywords(FactSort.NamedBlock),
        ["plainBlocks"] = Keywords(FactSort.PlainBlock),
        ["keyedFacts"] = Keywords(FactSort.Keyed),
        ["referenceFacts"] = Keywords(FactSort.Reference),
        ["resultFacts"] = Keywords(FactSort.Result),
        ["keywordFacts"] = Keywords(FactSort.Keyword),
        ["checkFacts"] = Keywords(FactSort.Check),
        ["plainFacts"] = Keywords(FactSort.Plain),
        ["results"] = Catalogue.Results.Select(result => result.Name),
        ["joiningWords"] = Slots().Select(slot => slot.Lead).OfType<string>().Concat(Joints),
        ["choices"] = Slots().Where(slot => slot.Form is QuantityOrNoneForm).Select(_ => "none")
            .Concat(Facts.Where(fact => SortOf(fact) != FactSort.Keyword).SelectMany(fact => fact.Signature.Slots).Select(slot => slot.Form).OfType<ChoiceForm>().SelectMany(form => form.Choices)),
        ["units"] = UnitTable.Spellings,
    };

    private static IEnumerable<string> Keywords(FactSort sort) =>
        Facts.GroupBy(fact => fact.Keyword).Where(group => group.Select(SortOf).Max() == sort).Select(group => group.Key);

    private static IEnumerable<Slot> Slots() => Facts.SelectMany(fact => fact.Signature.Slots);

    private static FactSort SortOf(FactDeclaration fact) => (fact.Opens, fact.Signature.Slots.Select(slot => slot.Form).ToList()) switch
    {
        (not null, [NameForm or LocalNameForm, ..]) => FactSort.NamedBlock,
        (not null, _) => FactSort.PlainBlock,
        (_, [TyreForm]) => FactSort.Tyre,
        (_, [ReferenceForm]) => FactSort.Reference,
        (_, [ResultNameForm, AnyValueForm]) or (_, [KeywordForm]) or (_, [ChoiceForm, LocalNameForm]) => FactSort.Keyword,
        (_, [ResultNameForm, ..]) => FactSort.Result,
        (_, [CheckNameForm, ..]) => FactSort.Check,
        (_, [NameForm or LocalNameForm or ScaledAxlesForm, ..]) => FactSort.Keyed,
        _ => FactSort.Plain,
    };

    /// <summary>One keyword may stand in several kinds of declaration; the sort that says most about it counts, which is the last of this list.</summary>
    private enum FactSort
    {
        Plain,
        Tyre,
        Check,
        Keyword,
        Result,
        Keyed,
        Reference,
        PlainBlock,
        NamedBlock,
    }
}

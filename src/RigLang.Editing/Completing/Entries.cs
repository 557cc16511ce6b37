using RigLang.Editing.Hovering;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Editing.Completing;

/// <summary>Gathers completions for one caret, in the order in which they are to be shown.</summary>
internal sealed class Entries(LineCaret caret)
{
    private readonly List<CompletionEntry> all = [];
    private readonly HashSet<(string Label, CompletionSort Sort)> seen = [];

    public IReadOnlyList<CompletionEntry> All => all;

    /// <param name="rank">A letter or digit: entries of a lower rank come first, those of one rank in the order in which they were added.</param>
    public void Add(string label, CompletionSort sort, string detail, string documentation = "", string? insert = null, char rank = '5', bool isSnippet = false)
    {
        if (seen.Add((label, sort)))
        {
            all.Add(new CompletionEntry(label, sort, detail, documentation, caret.Replace(insert ?? label), isSnippet, $"{rank}{all.Count:0000}"));
        }
    }

    /// <summary>The units of the kinds, those that the file already uses for them first.</summary>
    public void AddUnits(IEnumerable<QuantityKind> kinds)
    {
        var used = UnitsInFile();
        foreach (var kind in kinds)
        {
            foreach (var unit in kind.ExampleUnits.OrderByDescending(unit => used.GetValueOrDefault((kind, unit))))
            {
                var symbol = unit.Symbol;
                Add(symbol, CompletionSort.Unit, unit.Name == symbol ? kind.Name : unit.Name, insert: caret.IsGlued && symbol != "°" ? " " + symbol : symbol, rank: '1');
            }
        }
    }

    public void AddChoices(ChoiceForm form, FactDeclaration fact, bool isOptional)
    {
        foreach (var choice in form.Choices)
        {
            Add(choice, CompletionSort.Choice, fact.Meaning, rank: isOptional ? '4' : '2');
        }
    }

    private Dictionary<(QuantityKind, Unit), int> UnitsInFile()
    {
        var counts = new Dictionary<(QuantityKind, Unit), int>();
        var blocks = caret.Spot.State.Workspace.Link(caret.Spot.File.Id)!.Declarations.SelectMany(declaration => declaration.Block.WithInner());
        foreach (var measure in blocks.SelectMany(block => block.Facts).SelectMany(fact => fact.Values.Values).OfType<MeasureValue>().Select(value => value.Measure))
        {
            counts[(measure.Kind, measure.Unit)] = counts.GetValueOrDefault((measure.Kind, measure.Unit)) + 1;
        }

        return counts;
    }

    public void AddKeyword(FactDeclaration fact, string insert, char rank, string detail)
    {
        var documentation = FactCard.OfKeyword(fact).ToString();
        var sort = fact.Opens is null ? CompletionSort.Fact : CompletionSort.Block;
        Add(fact.Keyword, sort, detail, documentation, insert, rank);
        foreach (var alias in fact.Aliases)
        {
            Add(alias, sort, $"is written {fact.Keyword}: {fact.Meaning}", documentation, insert, '9');
        }
    }
}

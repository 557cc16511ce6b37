using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>The keywords at home in a block that it hasn't said yet, those wanted for the first verdict before all others.</summary>
internal static class KeywordCompleter
{
    public static void Add(Entries entries, LineCaret caret, OpenBlock open)
    {
        var own = open.Lines.Where(line => line.Place.Declaration == caret.Spot.Own.Syntax && line.Place.Line != caret.Spot.Line).Select(line => line.Declaration).ToHashSet();
        var inherited = open.Lines.Where(line => line.Place.Declaration != caret.Spot.Own.Syntax).ToLookup(line => line.Declaration);
        var column = ValueColumn(caret, open);
        foreach (var fact in open.Home.Facts.Where(fact => fact.Repeats || !own.Contains(fact)))
        {
            var before = inherited[fact].FirstOrDefault();
            var detail = before is null ? fact.Meaning : $"inherited: {BlockWords.Value(before)}";
            entries.AddKeyword(fact, Insert(caret, fact, column), before is null ? RankOf(fact, own.Contains(fact)) : '4', detail.Length > 0 ? detail : fact.Keyword);
        }

        foreach (var fact in EverywhereFacts.Block.Facts.Where(fact => fact != EverywhereFacts.Without || caret.Spot.Own.Parent is not null))
        {
            entries.AddKeyword(fact, Insert(caret, fact, column), '6', fact.Meaning);
        }
    }

    private static char RankOf(FactDeclaration fact, bool isSaid) => (fact.Need, isSaid) switch
    {
        (_, true) => '5',
        (Need.ForVerdict, _) => '1',
        (Need.ForResults, _) => '2',
        _ => '3',
    };

    /// <summary>The keyword with blanks up to where the neighbours' values stand, unless something follows already.</summary>
    private static string Insert(LineCaret caret, FactDeclaration fact, int column)
    {
        var hasRest = !string.IsNullOrWhiteSpace(caret.Spot.Syntax.Text[caret.WordEnd..]);
        var isAlone = fact.Signature.Slots.IsEmpty || fact.Signature.Slots[0] is { IsOptional: true };
        return hasRest || isAlone ? fact.Keyword
            : fact.Opens is null && fact.Signature.Slots.Length == 1 ? fact.Keyword.PadRight(Math.Max(fact.Keyword.Length + 1, column - caret.WordStart))
            : fact.Keyword + " ";
    }

    /// <summary>Where the value of the nearest line above in the same block begins.</summary>
    private static int ValueColumn(LineCaret caret, OpenBlock open)
    {
        for (var line = caret.Spot.Line - 1; line > (open.OpenerLine ?? 0); line--)
        {
            if (caret.Spot.Own.Syntax.Lines[line] is { Statement: FactSyntax { Arguments: [MeasureSyntax or WordSyntax or TyreSyntax, ..] } fact } && Vocabulary.Find(open.Home, fact.Keyword.Text) is { Opens: null })
            {
                return fact.Arguments[0].Span.Start;
            }
        }

        return 0;
    }
}

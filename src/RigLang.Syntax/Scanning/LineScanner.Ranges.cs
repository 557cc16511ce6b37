using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <content>Ranges as people write them in sentences: <c>7 to 10 %</c>, <c>7 % – 10 %</c>, <c>7 % ... 10 %</c>, <c>between 7 % and 10 %</c>.</content>
internal sealed partial class LineScanner
{
    /// <summary>Makes each one reported piece, since half of it would be another value.</summary>
    private void JoinRanges()
    {
        for (var i = 1; i + 1 < atoms.Count; i++)
        {
            if (!IsRangeWord(i) || atoms[i + 1].Kind != AtomKind.Number)
            {
                continue;
            }

            var (low, lowUnit) = atoms[i - 1].Kind == AtomKind.Unit && i > 1 ? (i - 2, TextOf(i - 1)) : (i - 1, "");
            if (atoms[low].Kind != AtomKind.Number)
            {
                continue;
            }

            var last = i + 2 < atoms.Count && atoms[i + 2].Kind == AtomKind.Unit ? i + 2 : i + 1;
            var highUnit = last == i + 2 ? TextOf(last) : lowUnit;
            var written = $"{Quantity(TextOf(low), lowUnit.Length == 0 ? highUnit : lowUnit)} .. {Quantity(TextOf(i + 1), highUnit)}";
            var first = low > 0 && TextOf(low - 1) == "between" ? low - 1 : low;
            var whole = TextSpan.FromBounds(atoms[first].Span.Start, atoms[last].Span.End);
            findings.RemoveAll(finding => finding.Span.Start >= whole.Start && finding.Span.End <= whole.End);
            findings.Add(RangeWithHyphen.OfWords(whole, written));
            atoms.RemoveRange(first, last - first + 1);
            atoms.Insert(first, new Atom(AtomKind.Stray, TokenAt(whole.Start, whole.End)));
            i = first;
        }

        static string Quantity(string number, string unit) => unit.Length == 0 ? number : $"{number} {unit}";
    }

    private string TextOf(int atom) => atoms[atom].Token.Text;

    private bool IsRangeWord(int atom) => atoms[atom].Kind switch
    {
        AtomKind.Word => TextOf(atom) == "to" || (TextOf(atom) == "and" && atoms.Take(atom).Any(static before => before.Token.Text == "between")),
        AtomKind.Stray => TextOf(atom) is "\u2013" or "\u2014" or "\u2026" or "...",
        _ => false,
    };
}

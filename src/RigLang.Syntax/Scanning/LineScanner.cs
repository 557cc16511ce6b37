using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <summary>
/// Cuts one line into atoms, left to right. Blanks part atoms; texts, signs and quantities are told apart even without. Classes are tried in the order
/// of the language page: text, sign, date, clock or offset, year and week, number with its unit, unit (only behind a number), word, stray.
/// </summary>
internal sealed partial class LineScanner
{
    private readonly string text;
    private readonly List<Atom> atoms = new(8);
    private readonly List<LineFinding> findings = [];
    private int at;
    private int pieces; // more than atoms, where stray pieces are joined
    private TextSpan? comment;

    private LineScanner(string text, int start)
    {
        this.text = text;
        at = start;
    }

    /// <param name="text">The line without its break.</param>
    /// <param name="start">Where the indent ends.</param>
    public static ScannedLine Scan(string text, int start)
    {
        var scanner = new LineScanner(text, start);
        scanner.ScanAll();
        return new ScannedLine(text, scanner.atoms, scanner.comment, scanner.findings);
    }

    private AtomKind? LastKind => atoms.Count > 0 ? atoms[^1].Kind : null;

    private bool IsGlued => atoms.Count > 0 && atoms[^1].Span.End == at;

    private void ScanAll()
    {
        while (SkipBlanks())
        {
            if (text[at] == '#' && !IsGlued)
            {
                comment = TextSpan.FromBounds(at, text.Length);
                break;
            }

            if (pieces++ >= LineTooLong.MostAtoms)
            {
                TakeRestAsStray();
                continue;
            }

            ScanAtom();
        }

        JoinRanges();
        JoinCompounds();
        AddInvisible();
    }

    private bool SkipBlanks()
    {
        while (at < text.Length && Characters.IsBlank(text[at]))
        {
            at++;
        }

        return at < text.Length;
    }

    private void ScanAtom()
    {
        var c = text[at];
        if (char.IsAsciiLetterLower(c) && LastKind is not AtomKind.Number)
        {
            ScanWord();
            return;
        }

        if (TryScanText(c) || TryScanSign(c) || TryScanNumeric(c) || TryScanUnit())
        {
            return;
        }

        ScanWord();
    }

    /// <summary>Gives up on the rest of an endless line, but still finds its comment.</summary>
    private void TakeRestAsStray()
    {
        var rest = LineRest.From(text, at);
        findings.Add(LineTooLong.Of(rest.Span));
        atoms.Add(new Atom(AtomKind.Stray, TokenAt(rest.Span.Start, rest.Span.End)));
        at = rest.Next;
    }

    private void Add(AtomKind kind, int length)
    {
        atoms.Add(new Atom(kind, TokenAt(at, at + length)));
        at += length;
    }

    /// <summary>Adds text of no class, as one piece with the stray text before it; reported once.</summary>
    private void AddStray(int end)
    {
        var from = at;
        if (LastKind == AtomKind.Stray && findings.Count > 0 && findings[^1].Check == StrayText.Check && findings[^1].Span == atoms[^1].Span)
        {
            from = atoms[^1].Span.Start;
            atoms.RemoveAt(atoms.Count - 1);
            findings.RemoveAt(findings.Count - 1);
        }

        var token = TokenAt(from, end);
        findings.Add(StrayText.Of(token.Span, text.AsSpan(from, end - from)));
        atoms.Add(new Atom(AtomKind.Stray, token));
        at = end;
    }

    /// <summary>Adds a piece that is already reported.</summary>
    private void AddReported(int end, LineFinding finding)
    {
        findings.Add(finding);
        atoms.Add(new Atom(AtomKind.Stray, TokenAt(at, end)));
        at = end;
    }

    private Token TokenAt(int from, int end) => new(TextSpan.FromBounds(from, end), WordCache.Get(text.AsSpan(from, end - from)));

    /// <summary>A number whose unit goes on with the one before it belongs to the same quantity: <c>33 ft 4 in</c>. Any other number glued to a unit is reported.</summary>
    private void JoinCompounds()
    {
        for (var i = 2; i < atoms.Count; i++)
        {
            if (atoms[i].Kind != AtomKind.Number || atoms[i - 1].Kind != AtomKind.Unit)
            {
                continue;
            }

            if (i + 1 < atoms.Count && atoms[i + 1].Kind == AtomKind.Unit && CompoundUnits.GoesOn(atoms[i - 1].Token.Text, atoms[i + 1].Token.Text))
            {
                atoms[i] = atoms[i] with { Kind = AtomKind.SmallerNumber };
            }
            else if (atoms[i].Span.Start == atoms[i - 1].Span.End)
            {
                findings.Add(MissingBlank.Before(atoms[i].Span));
            }
        }
    }
}

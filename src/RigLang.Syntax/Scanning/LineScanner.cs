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

    private bool TryScanSign(char c)
    {
        var next = at + 1 < text.Length ? text[at + 1] : '\0';
        var after = at + 2 < text.Length ? text[at + 2] : '\0';
        var startsNumber = Characters.IsDigit(next) || (next == '.' && Characters.IsDigit(after));
        switch (c)
        {
            case '<':
                Add(next == '=' ? AtomKind.AtMost : AtomKind.Less, next == '=' ? 2 : 1);
                return true;
            case '>':
                Add(next == '=' ? AtomKind.AtLeast : AtomKind.Greater, next == '=' ? 2 : 1);
                return true;
            case '\u2264':
                Add(AtomKind.AtMost, 1);
                return true;
            case '\u2265':
                Add(AtomKind.AtLeast, 1);
                return true;
            case '=':
                Add(AtomKind.Equal, 1);
                return true;
            case '\u00B1':
                Add(AtomKind.PlusMinus, 1);
                return true;
            case '+' when next == '-':
                Add(AtomKind.PlusMinus, 2);
                return true;
            case '.' when next == '.':
                Add(AtomKind.Dots, 2);
                return true;
            case '?':
                Add(AtomKind.Query, 1);
                return true;
            case '+' or '-' or '\u2212':
                return TryScanSumSign(c, startsNumber);
            case '\u00D7':
                ScanTimes();
                return true;
            case ',' or ';':
                ScanComma();
                return true;
            default:
                return TryScanArithmetic(c);
        }
    }

    /// <summary>A plus or minus by itself, or against a number where a sum would go on: <c>75 lb +60 lb</c>, <c>75lb+60lb</c>.</summary>
    private bool TryScanSumSign(char c, bool startsNumber)
    {
        var behindQuantity = LastKind is AtomKind.Unit or AtomKind.Number;
        var standsAlone = at + 1 == text.Length || Characters.IsBlank(text[at + 1]);
        if (!standsAlone && !(startsNumber && behindQuantity && !IsOffset(at)))
        {
            return false;
        }

        var sign = new TextSpan(at, 1);
        if (behindQuantity && (IsGlued || !standsAlone))
        {
            findings.Add(MissingBlank.Of(sign, $"{(IsGlued ? " " : "")}{c}{(standsAlone ? "" : " ")}"));
        }

        Add(Characters.IsPlus(c) ? AtomKind.Plus : AtomKind.Minus, 1);
        return true;
    }

    /// <summary>Makes the number before an <c>x</c> a count.</summary>
    private void ScanTimes()
    {
        if (LastKind != AtomKind.Number)
        {
            AddStray(at + 1);
            return;
        }

        var glued = IsGlued;
        var tight = at + 1 < text.Length && !Characters.IsBlank(text[at + 1]);
        if (glued || tight)
        {
            findings.Add(MissingBlank.Of(new TextSpan(at, 1), $"{(glued ? " " : "")}{text[at]}{(tight ? " " : "")}"));
        }

        atoms[^1] = atoms[^1] with { Kind = AtomKind.Count };
        Add(AtomKind.Times, 1);
    }

    private void ScanComma()
    {
        var needsBlank = IsGlued && at + 1 < text.Length && !Characters.IsBlank(text[at + 1]);
        var span = new TextSpan(at, 1);
        findings.Add(CommaInLine.Of(span, needsBlank));
        Add(AtomKind.Stray, 1);
    }

    private bool TryScanArithmetic(char c)
    {
        var alone = at + 1 == text.Length || Characters.IsBlank(text[at + 1]);
        if (Characters.IsBracket(c))
        {
            AddReportedOnce(1, BracketOrFormula.Check, static (span, typed) => BracketOrFormula.Of(span, typed));
            return true;
        }

        if (!alone || !(c == '/' || Characters.IsProductSign(c)))
        {
            return false;
        }

        if (LastKind == AtomKind.Number)
        {
            atoms[^1] = atoms[^1] with { Kind = AtomKind.Count };
            if (c != '/')
            {
                findings.Add(BracketOrFormula.OfTimes(new TextSpan(at, 1)));
                Add(AtomKind.Times, 1);
                return true;
            }
        }

        if (LastKind == AtomKind.Unit && TryJoinUnitPieces())
        {
            return true;
        }

        AddReportedOnce(1, BracketOrFormula.Check, static (span, typed) => BracketOrFormula.Of(span, typed));
        return true;
    }

    private void AddReportedOnce(int length, CheckDeclaration check, Func<TextSpan, string, LineFinding> report)
    {
        if (!findings.Exists(finding => finding.Check == check))
        {
            findings.Add(report(new TextSpan(at, length), text.Substring(at, length)));
        }

        Add(AtomKind.Stray, length);
    }

    /// <summary>Gives up on the rest of an endless line, but still finds its comment.</summary>
    private void TakeRestAsStray()
    {
        var from = at;
        var inText = false;
        for (; at < text.Length; at++)
        {
            inText ^= text[at] == '"';
            if (text[at] == '#' && !inText && Characters.IsBlank(text[at - 1]))
            {
                break;
            }
        }

        var end = at;
        while (Characters.IsBlank(text[end - 1]))
        {
            end--;
        }

        var rest = TextSpan.FromBounds(from, end);
        findings.Add(LineTooLong.Of(rest));
        atoms.Add(new Atom(AtomKind.Stray, new Token(rest, text.Substring(from, rest.Length))));
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

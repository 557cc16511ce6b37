using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;

namespace RigLang.Syntax.Scanning;

/// <content>Signs: comparisons, ±, dots, sums and counts; and the signs of formulas and lists, which no line can have.</content>
internal sealed partial class LineScanner
{
    /// <summary>How far the other bracket is looked for.</summary>
    private const int LongestBracket = 200;

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
            case '.' when next == '.' && after == '.':
                AddStray(at + 3);
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
            ScanBracket();
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

        AddFormula(at + 1);
        return true;
    }

    /// <summary>Takes what stands in brackets, with a unit behind it, as one piece: its parts mean nothing by themselves.</summary>
    private void ScanBracket()
    {
        var depth = 0;
        var end = at;
        do
        {
            depth += text[end] is '(' or '[' or '{' ? 1 : Characters.IsBracket(text[end]) ? -1 : 0;
            end++;
        }
        while (depth > 0 && end < Math.Min(text.Length, at + LongestBracket) && text[end] is not ('"' or '#'));

        if (depth != 0)
        {
            AddFormula(at + 1);
            return;
        }

        var (unitStart, unitEnd) = text.AsSpan(at, end - at).ContainsAnyInRange('0', '9') ? UnitBehind(end) : (end, end);
        AddFormula(unitEnd > unitStart ? unitEnd : end);
    }

    private void AddFormula(int end)
    {
        if (!findings.Exists(static finding => finding.Check == BracketOrFormula.Check))
        {
            findings.Add(BracketOrFormula.Of(TextSpan.FromBounds(at, end), text[at..end]));
        }

        Add(AtomKind.Stray, end - at);
    }
}

using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <content>Numbers and the units behind them.</content>
internal sealed partial class LineScanner
{
    /// <summary>No measurement has as many digits, and no unit as many letters.</summary>
    private const int LongestNumber = 40;

    private bool TryScanNumeric(char c)
    {
        var digits = at + (Characters.IsSign(c) ? 1 : 0);
        if (digits >= text.Length || !(IsDigitAt(digits) || (text[digits] == '.' && IsDigitAt(digits + 1))))
        {
            return false;
        }

        if (!TryScanMoment())
        {
            ScanNumber(digits);
        }

        return true;
    }

    private void ScanNumber(int digits)
    {
        var end = EndOfNumber(digits);
        if (end - at > LongestNumber)
        {
            AddForbidden(end, NumberUnreadable.Of(TextSpan.FromBounds(at, end), text[at..end]));
            return;
        }

        if (TryScanForbidden(digits, end))
        {
            return;
        }

        if (text[digits] == '.')
        {
            findings.Add(LeadingZero.Of(TextSpan.FromBounds(at, end), digits));
        }

        if (IsGlued && (atoms[^1].IsWord || atoms[^1].Kind == AtomKind.Text))
        {
            findings.Add(MissingBlank.Before(new TextSpan(at, 1)));
        }

        Add(AtomKind.Number, end - at);
    }

    /// <summary>Where a well-formed number ends: digits and point, a fraction, a fraction behind whole inches, or a slope.</summary>
    private int EndOfNumber(int from)
    {
        var end = EndOfDigits(from);
        if (end > from && CharAt(end) == '/' && IsDigitAt(end + 1))
        {
            return EndOfDigits(end + 1);
        }

        if (end > from && CharAt(end) == '-' && IsDigitAt(end + 1))
        {
            var over = EndOfDigits(end + 1);
            return CharAt(over) == '/' && IsDigitAt(over + 1) ? EndOfDigits(over + 1) : end;
        }

        if (end == from + 1 && text[from] == '1' && CharAt(end) == ':' && IsDigitAt(end + 1))
        {
            return EndOfDecimals(EndOfDigits(end + 1));
        }

        return EndOfDecimals(end);
    }

    private int EndOfDecimals(int end) => CharAt(end) == '.' && IsDigitAt(end + 1) ? EndOfDigits(end + 1) : end;

    private int EndOfDigits(int from)
    {
        var end = from;
        while (end < text.Length && (IsDigitAt(end) || (text[end] == '_' && end > from)))
        {
            end++;
        }

        return end;
    }

    /// <summary>A unit stands behind a number; a sign, text, number or joining word does not become one.</summary>
    private bool TryScanUnit()
    {
        if (LastKind != AtomKind.Number)
        {
            return false;
        }

        var (from, end) = UnitBehind(at);
        if (end == from)
        {
            return false;
        }

        Add(AtomKind.Unit, end - at);
        return true;
    }

    private (int Start, int End) UnitBehind(int numberEnd)
    {
        var from = numberEnd;
        while (from < text.Length && Characters.IsBlank(text[from]))
        {
            from++;
        }

        var end = UnitShape.EndOf(text, from, text.Length);
        if (end == from || JoiningWords.Contains(text.AsSpan(from, end - from)))
        {
            return (from, from);
        }

        // A unit ends where a word would, or where a sum or the rest of a compound is glued to it; else it is no unit but some word.
        var fits = end - from <= LongestNumber && (end == text.Length || Characters.EndsWord(text, end) || IsDigitAt(end)
            || (Characters.IsSign(text[end]) && (end + 1 == text.Length || IsDigitAt(end + 1) || Characters.IsBlank(text[end + 1]))));
        return fits ? (from, end) : (from, from);
    }

    /// <summary>Reads <c>km / h</c> as one piece that lacks its blanks.</summary>
    private bool TryJoinUnitPieces()
    {
        var next = at + 1;
        while (next < text.Length && Characters.IsBlank(text[next]))
        {
            next++;
        }

        var end = UnitShape.EndOf(text, next, text.Length);
        if (end == next || (end < text.Length && !Characters.EndsWord(text, end)) || JoiningWords.Contains(text.AsSpan(next, end - next)))
        {
            return false;
        }

        CollapseQuantity(end);
        return true;
    }

    /// <summary>Takes number and unit before this place back and makes them, with what follows up to <paramref name="end"/>, one reported piece.</summary>
    private void CollapseQuantity(int end)
    {
        var unit = atoms[^1].Span;
        var from = atoms[^2].Span.Start;
        atoms.RemoveRange(atoms.Count - 2, 2);
        var typed = TextSpan.FromBounds(unit.Start, end);
        findings.Add(UnitInPieces.Of(typed, text[unit.Start..end]));
        atoms.Add(new Atom(AtomKind.Stray, TokenAt(from, end)));
        at = end;
    }

    private char CharAt(int index) => index >= 0 && index < text.Length ? text[index] : '\0';

    private bool IsDigitAt(int index) => Characters.IsDigit(CharAt(index));

    private int EndOfRun(int from, Func<char, bool> belongs)
    {
        while (from < text.Length && belongs(text[from]))
        {
            from++;
        }

        return from;
    }
}

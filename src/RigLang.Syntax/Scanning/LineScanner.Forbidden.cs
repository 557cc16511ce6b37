using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;

namespace RigLang.Syntax.Scanning;

/// <content>The ways in which people write numbers and files can't: each is recognised only to say how it is written here.</content>
internal sealed partial class LineScanner
{
    /// <summary>Decimal commas, exponents, foot marks, ranges with hyphens. Each is reported and, with its unit, kept as one stray piece.</summary>
    private bool TryScanForbidden(int digits, int end)
    {
        var c = CharAt(end);
        if (c == ',' && IsDigitAt(end + 1))
        {
            var whole = EndOfRun(end, static c => Characters.IsDigit(c) || c is ',' or '.' or '_');
            AddForbidden(whole, CommaInNumber.Of(TextSpan.FromBounds(at, whole), text[at..whole]));
            return true;
        }

        if (c is 'e' or 'E' && (IsDigitAt(end + 1) || (CharAt(end + 1) is '+' or '-' or '\u2212' && IsDigitAt(end + 2))))
        {
            var whole = EndOfDigits(end + 2);
            AddForbidden(whole, ExponentNumber.Of(TextSpan.FromBounds(at, whole), text[at..whole]));
            return true;
        }

        if (Characters.IsFootMark(c) || Characters.IsInchMark(c))
        {
            ScanFeetAndInches(end);
            return true;
        }

        if ((c is '-' or '\u2013' or '\u2014' or '\u2212') && IsDigitAt(end + 1) && CharAt(end - 1) != '/')
        {
            ScanHyphenRange(end);
            return true;
        }

        if (c is '.' or ':' or '/' && !(c == '.' && CharAt(end + 1) == '.'))
        {
            var whole = EndOfRun(end, static c => Characters.IsDigit(c) || c is '.' or ':' or '/' or '_');
            while (whole > end + 1 && text[whole - 1] == '.' && text[whole - 2] == '.')
            {
                whole -= 2; // the dots of a range
            }

            AddForbidden(whole, NumberUnreadable.Of(TextSpan.FromBounds(at, whole), text[at..whole]));
            return true;
        }

        return false;
    }

    private void ScanFeetAndInches(int mark)
    {
        if (Characters.IsInchMark(text[mark]))
        {
            AddReported(mark + 1, FeetAndInchMarks.Of(TextSpan.FromBounds(at, mark + 1), null, text[at..mark]));
            return;
        }

        var next = mark + 1;
        while (next < text.Length && Characters.IsBlank(text[next]))
        {
            next++;
        }

        var end = IsDigitAt(next) ? EndOfNumber(next) : next;
        if (end > next && end - next <= LongestNumber && Characters.IsInchMark(CharAt(end)))
        {
            AddReported(end + 1, FeetAndInchMarks.Of(TextSpan.FromBounds(at, end + 1), text[at..mark], text[next..end]));
        }
        else
        {
            AddReported(mark + 1, FeetAndInchMarks.Of(TextSpan.FromBounds(at, mark + 1), text[at..mark], null));
        }
    }

    private void ScanHyphenRange(int hyphen)
    {
        var end = EndOfNumber(hyphen + 1);
        if (end - hyphen > LongestNumber)
        {
            AddForbidden(end, NumberUnreadable.Of(TextSpan.FromBounds(at, end), text[at..end]));
            return;
        }

        var (unitStart, unitEnd) = UnitBehind(end);
        var whole = unitEnd > unitStart ? unitEnd : end;
        AddReported(whole, RangeWithHyphen.Of(TextSpan.FromBounds(at, whole), text[at..hyphen], text[(hyphen + 1)..end], text[unitStart..unitEnd]));
    }

    /// <summary>Adds a reported number together with the unit behind it, so that the unit isn't taken for a word of the fact.</summary>
    private void AddForbidden(int end, LineFinding finding)
    {
        var (unitStart, unitEnd) = UnitBehind(end);
        AddReported(unitEnd > unitStart ? unitEnd : end, finding);
    }
}

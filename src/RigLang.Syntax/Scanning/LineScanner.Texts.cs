using RigLang.Syntax.Checks;
using RigLang.Syntax.Checks.Writing;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Scanning;

/// <content>Texts in quotes, words, and characters that can't be seen.</content>
internal sealed partial class LineScanner
{
    private bool TryScanText(char c)
    {
        if (c == '"')
        {
            WarnIfGlued();
            var close = text.IndexOf('"', at + 1);
            if (close >= 0)
            {
                Add(AtomKind.Text, close + 1 - at);
                return true;
            }

            var end = text.Length;
            while (end > at + 1 && Characters.IsBlank(text[end - 1]))
            {
                end--;
            }

            findings.Add(UnclosedText.Of(TextSpan.FromBounds(at, end)));
            Add(AtomKind.Text, end - at);
            at = text.Length;
            return true;
        }

        var closing = IsGlued ? "" : OtherQuotes.ClosingFor(c);
        if (closing.Length == 0)
        {
            return false;
        }

        var last = text.AsSpan(at + 1).IndexOfAny(closing);
        if (last < 0)
        {
            return false;
        }

        var span = new TextSpan(at, last + 2);
        findings.Add(OtherQuotes.Of(span, text.Substring(at + 1, last)));
        Add(AtomKind.Text, span.Length);
        return true;
    }

    private void WarnIfGlued()
    {
        if (IsGlued && (atoms[^1].IsWord || atoms[^1].IsNumber || atoms[^1].Kind is AtomKind.Unit or AtomKind.Text))
        {
            findings.Add(MissingBlank.Before(new TextSpan(at, 1)));
        }
    }

    private int EndOfWord(int from)
    {
        var end = from;
        while (end < text.Length && !Characters.EndsWord(text, end))
        {
            end++;
        }

        return end;
    }

    private void ScanWord()
    {
        var end = EndOfWord(at);
        if (end == at)
        {
            AddStray(at + 1);
            return;
        }

        var word = text.AsSpan(at, end - at);
        if (word.Length > NameMalformed.LongestName)
        {
            AddReported(end, NameMalformed.OfLength(TextSpan.FromBounds(at, end), word));
            return;
        }

        if (LastKind == AtomKind.Number && word[0] == 'x' && (word.Length == 1 || Characters.IsDigit(word[1]) || word[1] == '.'))
        {
            ScanTimes();
            return;
        }

        if (!NameShape.IsName(word) && !(IsCode(word) && atoms.Count == 1 && atoms[0].Token.Text == "allow") && !TryExcuse(word, end))
        {
            AddStray(end);
            return;
        }

        if (LastKind == AtomKind.Unit && UnitInPieces.IsProduct(atoms[^1].Token.Text, word.ToString()))
        {
            CollapseQuantity(end);
            return;
        }

        if (Composition.IsNeeded(word))
        {
            atoms.Add(new Atom(AtomKind.Word, new Token(TextSpan.FromBounds(at, end), Composition.Compose(word.ToString()))));
            at = end;
            return;
        }

        Add(JoiningWords.KindOf(word), end - at);
    }

    /// <summary>True if the word is no name but may stand as one, with a finding that says how it is written.</summary>
    private bool TryExcuse(ReadOnlySpan<char> word, int end)
    {
        var span = TextSpan.FromBounds(at, end);
        var hidden = word.ToString().Any(Characters.IsInvisible);
        var typed = Names.Compose(hidden ? string.Concat(word.ToString().Where(c => !Characters.IsInvisible(c))) : word.ToString());
        if (hidden && NameShape.IsName(typed))
        {
            return true; // the hidden characters are reported for the whole line
        }

        var mended = NameShape.Mend(typed);
        if (mended is null || !char.IsLetter(typed, 0))
        {
            return false;
        }

        findings.Add(typed.Equals(mended, StringComparison.OrdinalIgnoreCase)
            ? NameNotLowerCase.Of(span, word.ToString(), mended)
            : NameMalformed.Of(span, word.ToString(), mended));
        return true;
    }

    /// <summary>The code of a check, such as RL301; the one word that may have capitals, and only behind <c>allow</c>.</summary>
    private static bool IsCode(ReadOnlySpan<char> word)
    {
        var letters = word.IndexOfAnyExceptInRange('A', 'Z');
        return letters is >= 1 and <= 4 && word.Length - letters is >= 2 and <= 4 && !word[letters..].ContainsAnyExceptInRange('0', '9');
    }

    private void AddInvisible()
    {
        var from = text.AsSpan().IndexOfAnyExceptInRange(' ', '~');
        for (var i = from; i >= 0 && i < text.Length; i++)
        {
            var c = text[i];
            if (c is >= ' ' and <= '~' or '\t' || (i == 0 && c == '\uFEFF'))
            {
                continue;
            }

            var isBlank = Characters.IsBlank(c);
            var isHidden = Characters.IsInvisible(c);
            if (!(isBlank || isHidden) || (!Characters.IsReordering(c) && IsInTextOrComment(i)))
            {
                continue;
            }

            var end = i + 1;
            while (end < text.Length && (isBlank ? text[end] is not (' ' or '\t') && Characters.IsBlank(text[end]) : Characters.IsInvisible(text[end])))
            {
                end++;
            }

            findings.Add(InvisibleCharacter.Of(TextSpan.FromBounds(i, end), text[i..Math.Min(end, i + 8)], isBlank ? " " : ""));
            return; // one a line is enough: its fix brings the next
        }
    }

    private bool IsInTextOrComment(int position) =>
        position >= comment?.Start || atoms.Exists(atom => atom.Kind == AtomKind.Text && atom.Span.Start <= position && position < atom.Span.End);
}

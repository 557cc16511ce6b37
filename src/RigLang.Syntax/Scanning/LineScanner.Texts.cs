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

        var name = NameShape.IsName(word) ? Composed(word)
            : IsCode(word) && atoms.Count == 1 && atoms[0].Token.Text == "allow" ? word.ToString()
            : Mended(word, end);
        if (name is null)
        {
            AddStray(end);
            return;
        }

        if (LastKind == AtomKind.Unit && UnitInPieces.IsProduct(atoms[^1].Token.Text, name))
        {
            CollapseQuantity(end);
            return;
        }

        atoms.Add(new Atom(JoiningWords.KindOf(name), new Token(TextSpan.FromBounds(at, end), name)));
        at = end;
    }

    private static string Composed(ReadOnlySpan<char> name) => Composition.IsNeeded(name) ? Composition.Compose(name.ToString()) : WordCache.Get(name);

    /// <summary>
    /// The name that a misspelt word stands for: it is reported once, here, and then read as if it were written well, so that nothing that follows from it
    /// is reported as well. Null for what can't be a name at all.
    /// </summary>
    private string? Mended(ReadOnlySpan<char> word, int end)
    {
        var span = TextSpan.FromBounds(at, end);
        var written = word.ToString();
        var typed = Names.Compose(written.Any(Characters.IsInvisible) ? string.Concat(written.Where(c => !Characters.IsInvisible(c))) : written);
        if (NameShape.IsName(typed))
        {
            return typed; // the hidden characters are reported for the whole line
        }

        var mended = NameShape.Mend(typed);
        if (mended is null || !char.IsLetter(typed, 0))
        {
            return null;
        }

        findings.Add(typed.Equals(mended, StringComparison.OrdinalIgnoreCase) ? NameNotLowerCase.Of(span, written, mended) : NameMalformed.Of(span, written, mended));
        return mended;
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

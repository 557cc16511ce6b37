using RigLang.Editing.Locating;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>A caret in a line that is being written: what stands before the word at the caret, and what a completion replaces.</summary>
internal sealed class LineCaret
{
    public LineCaret(Spot spot)
    {
        Spot = spot;
        var text = spot.Syntax.Text;
        var at = spot.Position.Character;
        WordStart = StartOfWord(text, at);
        WordEnd = at;
        while (WordEnd < text.Length && !IsEnd(text[WordEnd]))
        {
            WordEnd++;
        }

        var before = text[..WordStart];
        Before = FileSyntax.Parse("rig x\n" + before).Lines[^1].Statement as FactSyntax;
        IsGlued = WordStart > 0 && !char.IsWhiteSpace(text[WordStart - 1]);
    }

    public Spot Spot { get; }

    public int WordStart { get; }

    public int WordEnd { get; }

    /// <summary>The word as far as it is written.</summary>
    public string Word => Spot.Syntax.Text[WordStart..Spot.Position.Character];

    /// <summary>The fact as far as it stands before the word; null while the word is the line's first.</summary>
    public FactSyntax? Before { get; }

    /// <summary>The word stands right behind a number or sign, without a blank.</summary>
    public bool IsGlued { get; }

    /// <summary>Nothing but blanks before the word.</summary>
    public bool IsFirstWord => string.IsNullOrWhiteSpace(Spot.Syntax.Text[..WordStart]);

    /// <summary>Inside quotes that are open before the caret, the place behind the opening one; else null.</summary>
    public int? TextStart
    {
        get
        {
            int? start = null;
            for (var index = 0; index < Spot.Position.Character; index++)
            {
                if (Spot.Syntax.Text[index] == '"')
                {
                    start = start is null ? index + 1 : null;
                }
            }

            return start;
        }
    }

    public bool IsInComment => Spot.Syntax.Comment is { } comment && Spot.Position.Character > comment.Start;

    public TextReplacement Replace(string newText) => new(Spot.RangeOf(TextSpan.FromBounds(WordStart, WordEnd)), newText);

    /// <summary>The run of characters before the caret, without the number or sign that it may begin with: what is left is a word or a unit.</summary>
    private static int StartOfWord(string text, int at)
    {
        var start = at;
        while (start > 0 && !IsEnd(text[start - 1]))
        {
            start--;
        }

        if (start < at && (char.IsAsciiDigit(text[start]) || text[start] is '.' or '+' or '-' or '±' or '<' or '>' or '=' or '≤' or '≥' or '?'))
        {
            while (start < at && (char.IsAsciiDigit(text[start]) || text[start] is '.' or '_' or '/' or '-' or '+' or ':' or '±' or '<' or '>' or '=' or '≤' or '≥' or '?'))
            {
                start++;
            }
        }

        return start;
    }

    private static bool IsEnd(char c) => c is ' ' or '\t' or '"' or '#';
}

using System.Collections.Immutable;
using RigLang.Syntax.Reading;

namespace RigLang.Syntax.Tree;

/// <content>The next state of a file after an edit. Only the lines that the edit touches are read again.</content>
public sealed partial class FileSyntax
{
    /// <summary>The same file with the text of a range replaced; a range outside the file is cut to it.</summary>
    public FileSyntax WithChange(LinePosition start, LinePosition end, string newText)
    {
        (start, end) = (Clamp(start), Clamp(end));
        if (end < start)
        {
            (start, end) = (end, start);
        }

        var first = start.Line;
        var last = end.Line;
        var text = string.Concat(Lines[first].Text.AsSpan(0, start.Character), newText, Lines[last].Text.AsSpan(end.Character), LineSplitter.TextOf(Lines[last].Break));

        // A line feed that now follows a lone carriage return makes one break with it.
        if (first > 0 && text.StartsWith('\n') && Lines[first - 1].Break == LineBreak.CarriageReturn)
        {
            first--;
            text = string.Concat(Lines[first].Text, "\r", text);
        }

        var pieces = LineSplitter.Split(text);
        if (Lines[last].Break != LineBreak.None)
        {
            pieces.RemoveAt(pieces.Count - 1); // the empty piece behind the last break is the start of the next line
        }

        return Replace(first, last + 1, pieces);
    }

    /// <summary>Puts pieces in place of the lines from <paramref name="first"/> up to <paramref name="end"/>; lines that come out the same stay the same objects.</summary>
    private FileSyntax Replace(int first, int end, List<(string Text, LineBreak Break)> pieces)
    {
        var same = 0;
        while (first + same < end && same < pieces.Count && IsSame(Lines[first + same], pieces[same]))
        {
            same++;
        }

        var sameBehind = 0;
        while (end - sameBehind > first + same && sameBehind < pieces.Count - same && IsSame(Lines[end - 1 - sameBehind], pieces[^(sameBehind + 1)]))
        {
            sameBehind++;
        }

        first += same;
        end -= sameBehind;
        var added = pieces.Count - same - sameBehind;
        if (first == end && added == 0)
        {
            return this;
        }

        var lines = ImmutableArray.CreateBuilder<LineSyntax>(Lines.Length - (end - first) + added);
        lines.AddRange(Lines.AsSpan(0, first));
        for (var i = 0; i < added; i++)
        {
            var (text, lineBreak) = pieces[same + i];
            lines.Add(LineReader.Read(text, lineBreak));
        }

        lines.AddRange(Lines.AsSpan()[end..]);
        return WithLines(lines.MoveToImmutable(), first, end, added);
    }

    private static bool IsSame(LineSyntax line, (string Text, LineBreak Break) piece) => line.Break == piece.Break && line.Text == piece.Text;

    /// <summary>Cuts the lines into declarations anew around the change, and takes over all others.</summary>
    private FileSyntax WithLines(ImmutableArray<LineSyntax> lines, int first, int oldEnd, int added)
    {
        var shift = first + added - oldEnd;
        var kept = DeclarationAt(first == 0 ? 0 : first - 1); // the line above the change may get or lose what follows it
        var declarations = ImmutableArray.CreateBuilder<DeclarationSyntax>(Declarations.Length + 2);
        var firstLines = ImmutableArray.CreateBuilder<int>(Declarations.Length + 2);
        declarations.AddRange(Declarations.AsSpan(0, kept));
        firstLines.AddRange(FirstLines.AsSpan(0, kept));

        // The first old declaration that begins behind the change; it and all after it stay.
        var rest = DeclarationAt(oldEnd);
        while (rest < Declarations.Length && FirstLines[rest] < oldEnd)
        {
            rest++;
        }

        if (rest == 0 && !BlockReader.BeginsDeclaration(Lines[0]))
        {
            rest = 1; // only the file's first lines are a declaration without a head; with lines before them they no longer are one
        }

        var stop = rest < Declarations.Length ? FirstLines[rest] + shift : lines.Length;
        for (var at = FirstLines[kept]; at < stop;)
        {
            var end = EndOfDeclaration(lines, at);
            firstLines.Add(at);
            declarations.Add(Reuse(kept, at, lines, end) ?? BlockReader.Read(lines.Slice(at, end - at)));
            at = end;
        }

        for (; rest < Declarations.Length; rest++)
        {
            declarations.Add(Declarations[rest]);
            firstLines.Add(FirstLines[rest] + shift);
        }

        return new FileSyntax(lines, declarations.ToImmutable(), firstLines.ToImmutable());
    }

    /// <summary>The declaration before the change, if the change took nothing from it and gave it nothing.</summary>
    private DeclarationSyntax? Reuse(int kept, int at, ImmutableArray<LineSyntax> lines, int end)
    {
        if (at != FirstLines[kept] || Declarations[kept].Lines.Length != end - at)
        {
            return null;
        }

        var old = Declarations[kept].Lines.AsSpan();
        for (var i = 0; i < old.Length; i++)
        {
            if (!ReferenceEquals(old[i], lines[at + i]))
            {
                return null;
            }
        }

        return Declarations[kept];
    }
}

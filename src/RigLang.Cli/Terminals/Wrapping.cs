namespace RigLang.Cli.Terminals;

/// <summary>Breaks text between words. A word that is wider than a line stays whole, so that a path can still be clicked or copied.</summary>
internal static class Wrapping
{
    public static IEnumerable<Piece[]> Lines(ReadOnlySpan<Piece> pieces, int width, int indent)
    {
        var lines = new List<Piece[]>();
        var line = new List<Piece>();
        var used = 0;
        foreach (var (word, startsWord) in Words(pieces))
        {
            var size = Cells.Width(word.Text);
            if (startsWord && used > indent && used + size > width && word.Text.Trim().Length > 0)
            {
                lines.Add(Trimmed(line));
                line = [new Piece(new string(' ', indent))];
                used = indent;
            }

            if (used == indent && lines.Count > 0 && word.Text.Trim().Length == 0)
            {
                continue;
            }

            line.Add(word);
            used += size;
        }

        lines.Add(Trimmed(line));
        return lines;
    }

    /// <summary>Words and the blanks between them; two pieces that meet without a blank are one word, whose second part doesn't start one.</summary>
    private static List<(Piece Word, bool StartsWord)> Words(ReadOnlySpan<Piece> pieces)
    {
        var words = new List<(Piece, bool)>();
        var behindBlank = true;
        foreach (var piece in pieces)
        {
            for (var at = 0; at < piece.Text.Length;)
            {
                var isBlank = piece.Text[at] == ' ';
                var end = at + 1;
                while (end < piece.Text.Length && (piece.Text[end] == ' ') == isBlank)
                {
                    end++;
                }

                words.Add((piece with { Text = piece.Text[at..end] }, behindBlank));
                behindBlank = isBlank;
                at = end;
            }
        }

        return words;
    }

    private static Piece[] Trimmed(List<Piece> line)
    {
        while (line.Count > 0 && line[^1].Text.AsSpan().Trim(' ').IsEmpty)
        {
            line.RemoveAt(line.Count - 1);
        }

        return [.. line];
    }
}

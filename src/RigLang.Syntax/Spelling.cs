namespace RigLang.Syntax;

/// <summary>Finds the word that was probably meant by one that isn't known.</summary>
public static class Spelling
{
    /// <summary>Longer words than this are nobody's slip of the pen.</summary>
    private const int LongestWord = 48;

    /// <summary>The nearest of the candidates, or null if none is near enough; of two equally near ones the first.</summary>
    /// <param name="word">The word as typed.</param>
    /// <param name="candidates">What it could be, in order of preference.</param>
    /// <param name="limit">The most slips (a letter missing, added, exchanged, or two turned round); by default one in three letters, at most three.</param>
    public static string? Nearest(string word, IEnumerable<string> candidates, int? limit = null)
    {
        string? nearest = null;
        var most = limit ?? Math.Clamp(word.Length / 3, 1, 3);
        foreach (var candidate in candidates)
        {
            var distance = Distance(word, candidate, most);
            if (distance <= most && distance > 0)
            {
                nearest = candidate;
                most = distance - 1;
            }

            if (most <= 0)
            {
                break;
            }
        }

        return nearest;
    }

    /// <summary>
    /// The number of slips between two words after Damerau and Levenshtein (no letter touched twice); any number above <paramref name="limit"/> is given as limit + 1.
    /// </summary>
    public static int Distance(string first, string second, int limit = int.MaxValue - 1)
    {
        if (Math.Abs(first.Length - second.Length) > limit || Math.Max(first.Length, second.Length) > LongestWord)
        {
            return first == second ? 0 : limit + 1;
        }

        Span<int> beforeLast = stackalloc int[second.Length + 1];
        Span<int> last = stackalloc int[second.Length + 1];
        Span<int> row = stackalloc int[second.Length + 1];
        for (var j = 0; j <= second.Length; j++)
        {
            row[j] = j;
        }

        for (var i = 1; i <= first.Length; i++)
        {
            var free = beforeLast;
            beforeLast = last;
            last = row;
            row = free;
            row[0] = i;
            for (var j = 1; j <= second.Length; j++)
            {
                var exchanged = last[j - 1] + (first[i - 1] == second[j - 1] ? 0 : 1);
                row[j] = Math.Min(exchanged, Math.Min(last[j], row[j - 1]) + 1);
                if (i > 1 && j > 1 && first[i - 1] == second[j - 2] && first[i - 2] == second[j - 1])
                {
                    row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
                }
            }
        }

        return Math.Min(row[second.Length], limit == int.MaxValue ? limit : limit + 1);
    }
}

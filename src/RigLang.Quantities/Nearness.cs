namespace RigLang.Quantities;

/// <summary>Spellings that are a slip of the finger away.</summary>
internal static class Nearness
{
    private const int MostShown = 3;

    /// <summary>The nearest of the candidates, best first; none for a text so short or so far off that anything would do.</summary>
    public static IReadOnlyList<string> Among(string text, IEnumerable<string> candidates)
    {
        var allowed = text.Length switch { < 2 => 0, < 5 => 1, _ => 2 };
        return
        [
            .. candidates.Where(candidate => candidate.Length > 1 && Math.Abs(candidate.Length - text.Length) <= allowed)
                .Select(candidate => (candidate, Distance: Distance(text, candidate)))
                .Where(found => found.Distance <= allowed)
                .OrderBy(found => found.Distance).ThenBy(found => found.candidate, StringComparer.Ordinal)
                .Take(MostShown).Select(found => found.candidate),
        ];
    }

    /// <summary>Letters to insert, leave out, replace, or swap with their neighbour.</summary>
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            rows[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            rows[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var replace = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(replace, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
            }
        }

        return rows[a.Length, b.Length];
    }
}

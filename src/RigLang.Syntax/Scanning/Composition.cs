using System.Text;

namespace RigLang.Syntax.Scanning;

/// <summary>
/// Normalization Form C for names, after Unicode Standard Annex 15: taken apart, marks put in order, put together again. The framework's own does nothing
/// when globalisation is invariant, and a name must be the same name on every machine.
/// </summary>
internal static class Composition
{
    /// <summary>Below this no character takes part in a composition as a mark, or is one that stands for another.</summary>
    private const char FirstMark = '\u0300';

    public static bool IsNeeded(ReadOnlySpan<char> name) => name.ContainsAnyInRange(FirstMark, char.MaxValue);

    public static string Compose(string name)
    {
        var points = new List<int>(name.Length + 4);
        foreach (var rune in name.EnumerateRunes())
        {
            Decompose(rune.Value, points);
        }

        PutMarksInOrder(points);
        PutTogether(points);
        var composed = new StringBuilder(name.Length);
        foreach (var point in points)
        {
            composed.Append(new Rune(point).ToString());
        }

        return composed.ToString();
    }

    private static void Decompose(int point, List<int> into)
    {
        if (Hangul.TryDecompose(point, into))
        {
            return;
        }

        if (!CompositionTable.Parts.TryGetValue(point, out var parts))
        {
            into.Add(point);
            return;
        }

        Decompose(parts.First, into);
        if (parts.Second != 0)
        {
            Decompose(parts.Second, into);
        }
    }

    /// <summary>Marks that don't touch each other may be typed in any order; the class of each says which comes first.</summary>
    private static void PutMarksInOrder(List<int> points)
    {
        for (var i = 1; i < points.Count; i++)
        {
            var mark = points[i];
            var order = CompositionTable.ClassOf(mark);
            var at = i;
            while (order != 0 && at > 0 && CompositionTable.ClassOf(points[at - 1]) > order)
            {
                points[at] = points[at - 1];
                at--;
            }

            points[at] = mark;
        }
    }

    private static void PutTogether(List<int> points)
    {
        var starter = -1;
        var kept = 0;
        var lastClass = 0;
        foreach (var point in points.ToArray())
        {
            var order = CompositionTable.ClassOf(point);
            var isBlocked = starter >= 0 && kept - 1 > starter && (lastClass == 0 || lastClass >= order);
            if (starter >= 0 && !isBlocked && Whole(points[starter], point) is { } whole)
            {
                points[starter] = whole;
                continue;
            }

            if (order == 0)
            {
                starter = kept;
            }

            lastClass = order;
            points[kept++] = point;
        }

        points.RemoveRange(kept, points.Count - kept);
    }

    private static int? Whole(int first, int second) =>
        Hangul.Compose(first, second) ?? (CompositionTable.Wholes.TryGetValue((first, second), out var whole) ? whole : null);
}

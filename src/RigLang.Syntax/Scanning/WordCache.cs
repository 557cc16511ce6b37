namespace RigLang.Syntax.Scanning;

/// <summary>
/// Hands out one string for the words that every file repeats (keywords, units), so that a large file doesn't hold thousands of copies.
/// A slot that another thread overwrites is only a miss.
/// </summary>
internal static class WordCache
{
    private const int Slots = 2048;
    private const int Longest = 24;
    private static readonly string?[] Words = new string?[Slots];

    public static string Get(ReadOnlySpan<char> word)
    {
        if (word.Length > Longest)
        {
            return word.ToString();
        }

        var hash = 17u;
        foreach (var c in word)
        {
            hash = (hash * 31) + c;
        }

        ref var slot = ref Words[hash % Slots];
        var known = slot;
        if (known is not null && word.SequenceEqual(known))
        {
            return known;
        }

        return slot = word.ToString();
    }
}

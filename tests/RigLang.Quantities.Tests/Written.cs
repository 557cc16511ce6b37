namespace RigLang.Quantities.Tests;

/// <summary>Splits a measure at its blanks, as a scanner of lines would, and reads it.</summary>
internal static class Written
{
    public static MeasureReading Read(string text, params QuantityKind[] kinds)
    {
        var sides = text.Split(" ± ");
        return MeasureReader.Read(Sum(sides[0]), sides.Length > 1 ? Parts(sides[1].Split(' ', StringSplitOptions.RemoveEmptyEntries)) : null, kinds);
    }

    private static List<QuantityTerm> Sum(string text)
    {
        var terms = new List<QuantityTerm>();
        var negative = false;
        var words = new List<string>();
        foreach (var word in text.Split(' ').Append("+"))
        {
            if (word is not ("+" or "-"))
            {
                words.Add(word);
                continue;
            }

            var times = words.IndexOf("x");
            terms.Add(new(negative, times > 0 ? words[0] : null, Parts([.. words[(times + 1)..]])));
            words.Clear();
            negative = word == "-";
        }

        return terms;
    }

    /// <summary>A word that begins like a number is one; a degree sign may be glued to it.</summary>
    private static List<QuantityPart> Parts(string[] words)
    {
        var parts = new List<QuantityPart>();
        for (var at = 0; at < words.Length; at++)
        {
            if (words[at].EndsWith('°') && words[at].Length > 1)
                parts.Add(new(words[at][..^1], "°"));
            else if (at + 1 < words.Length && !IsNumber(words[at + 1]))
                parts.Add(new(words[at], words[++at]));
            else
                parts.Add(new(words[at], null));
        }

        return parts;
    }

    private static bool IsNumber(string word) => char.IsAsciiDigit(word.TrimStart('-', '+', '.')[..1].FirstOrDefault('x'));
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;

namespace RigLang.Model.Checks.Naming;

/// <summary>
/// Finds the fact that somebody means who writes the word of the trade for it, in one word or several: `gvwr`, `gross weight 1500 kg`,
/// `front axle rating 1200 kg`. Several words are read as one with hyphens; the longest stretch that means something wins.
/// </summary>
internal static class TradeWords
{
    private const int MostWords = 4;

    /// <param name="keyword">The first word of the line.</param>
    /// <param name="block">Where the line stands.</param>
    /// <returns>The fact, and the words from the line's first that name it; null if they name none.</returns>
    public static (Place Place, FactDeclaration Fact)? Find(Place keyword, BlockDeclaration block)
    {
        var words = Words(keyword);
        for (var count = words.Count; count > 0; count--)
        {
            for (var first = 0; first + count <= words.Count; first++)
            {
                // One word alone out of the middle of a line would be a guess.
                if ((first == 0 || count > 1) && Named(string.Join('-', words.Skip(first).Take(count).Select(word => keyword.Declaration.Lines[keyword.Line].TextOf(word))), block) is { } fact)
                {
                    var span = new TextSpan(keyword.Span.Start, words[first + count - 1].End - keyword.Span.Start);
                    return (keyword with { Span = span }, fact);
                }
            }
        }

        return null;
    }

    private static FactDeclaration? Named(string words, BlockDeclaration block)
    {
        var word = words.ToLowerInvariant();
        var ways = Vocabulary.FindAnywhere(word).Concat(Vocabulary.FindByAlias(word)).ToList();
        return ways.FirstOrDefault(fact => fact.Home == block) ?? ways.FirstOrDefault(fact => fact.Home.Kind == block.Kind);
    }

    /// <summary>The words that begin with the keyword, one blank or more between them, up to the first thing that is none.</summary>
    private static List<TextSpan> Words(Place keyword)
    {
        var text = keyword.Declaration.Lines[keyword.Line].Text;
        List<TextSpan> words = [keyword.Span];
        while (words.Count < MostWords)
        {
            var start = words[^1].End;
            while (start < text.Length && text[start] is ' ' or '\t')
            {
                start++;
            }

            var end = start;
            while (end < text.Length && (char.IsAsciiLetter(text[end]) || (text[end] == '-' && end > start)))
            {
                end++;
            }

            // A word that runs on into a digit, a sign or a quote is a value or a unit.
            if (end == start || start == words[^1].End || (end < text.Length && text[end] is not (' ' or '\t')))
            {
                break;
            }

            words.Add(new TextSpan(start, end - start));
        }

        return words;
    }
}

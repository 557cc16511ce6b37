using RigLang.Editing;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Translate;

/// <summary>Semantic tokens: the protocol's own types, which every colour theme knows, and their relative numbering.</summary>
internal static class MeaningTokens
{
    private const uint Declaration = 1; // the first bit of the modifiers below

    internal static SemanticTokensLegend Legend { get; } = new(
        ["keyword", "class", "property", "variable", "number", "type", "enumMember", "modifier", "operator", "string", "comment"], ["declaration"]);

    /// <summary>Tokens in the order of the text; one that begins inside another, or is empty, is left out, as clients can't show it.</summary>
    internal static uint[] ToProtocol(IEnumerable<MeaningToken> tokens)
    {
        var data = new List<uint>();
        var (line, character, end) = (0, 0, 0);
        foreach (var token in tokens.OrderBy(t => t.Line).ThenBy(t => t.Character))
        {
            if (Type(token.Sort) is not { } type || token.Length <= 0 || (token.Line == line && token.Character < end))
            {
                continue;
            }

            data.Add((uint)(token.Line - line));
            data.Add((uint)(token.Line == line ? token.Character - character : token.Character));
            data.Add((uint)token.Length);
            data.Add(type);
            data.Add(token.IsDeclaration ? Declaration : 0);
            (line, character, end) = (token.Line, token.Character, token.Character + token.Length);
        }

        return [.. data];
    }

    /// <summary>What turns one list into the other: the numbers between what they have in common at both ends. Places are relative, so an edit leaves the rest as it was.</summary>
    internal static SemanticTokensEdit[] Difference(uint[] before, uint[] now)
    {
        var same = before.AsSpan().CommonPrefixLength(now);
        if (same == before.Length && same == now.Length)
        {
            return [];
        }

        var behind = 0;
        while (behind < before.Length - same && behind < now.Length - same && before[^(behind + 1)] == now[^(behind + 1)])
        {
            behind++;
        }

        return [new SemanticTokensEdit((uint)same, (uint)(before.Length - same - behind), now[same..^behind])];
    }

    /// <summary>The place in the legend; null for what has no colour of its own.</summary>
    private static uint? Type(MeaningSort sort) => sort switch
    {
        MeaningSort.Keyword => 0,
        MeaningSort.DeclarationName => 1,
        MeaningSort.Key => 2,
        MeaningSort.Reference => 3,
        MeaningSort.Number => 4,
        MeaningSort.Unit => 5,
        MeaningSort.Choice => 6,
        MeaningSort.Joint => 7,
        MeaningSort.Sign => 8,
        MeaningSort.Text => 9,
        MeaningSort.Comment => 10,
        _ => null,
    };
}

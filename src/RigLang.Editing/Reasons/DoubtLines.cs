using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;

namespace RigLang.Editing.Reasons;

/// <summary>What a result's doubt comes from, in words.</summary>
public static class DoubtLines
{
    private const int MostBrief = 3;

    /// <summary>"Most of the doubt: `drag-area` of rig coast (± 4 %); …"; empty where nothing is in doubt.</summary>
    public static string InBrief(Node node, UnitChoice units)
    {
        if (node.Computation is not IResult result || DoubtTable.Of(result, node.Subject) is not { } doubt)
        {
            return "";
        }

        var parts = doubt.Parts.Take(MostBrief).Select(part => (part, Half: units.WriteHalfWidth(result, node.Subject, doubt.Value, Math.Abs(part.Effect)))).Where(pair => pair.Half.Length > 0).ToList();
        return parts.Count == 0 ? "" : $"Most of the doubt: {string.Join("; ", parts.Select(pair => $"{pair.part.Fact.Fact.Words} (± {pair.Half})"))}.";
    }

    /// <summary>How much of the whole doubt a part is, by squares: 0 to 1.</summary>
    public static double ShareOf(Doubt doubt, DoubtPart part) => doubt.HalfWidth > 0 ? part.Effect * part.Effect / (doubt.HalfWidth * doubt.HalfWidth) : 0;
}

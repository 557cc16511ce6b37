using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Hovering;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Editing.Reporting;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax;

namespace RigLang.Editing.Fixing;

/// <summary>
/// Writes out what stands in for a fact: in place of its <c>?</c>, or as a line of its own under the line that opens its block. The comment says that it is an
/// estimate, since a written line isn't marked as one any more.
/// </summary>
internal static class EstimateWriting
{
    private const int Most = 6;

    public static IEnumerable<OfferedChange> At(Spot spot) =>
        spot.Linked is not { } declaration ? []
        : spot.Fact is { Query: not null } line && spot.Block is { } block ? InPlace(spot, line, block)
        : spot.Line == 0 ? NewLines(spot, declaration.Block, 0, 4)
        : spot.Fact is { Declaration.Opens: not null } opener && BlockOf(declaration.Block, opener) is { } inner ? NewLines(spot, inner, spot.Line, spot.Syntax.IndentLength + 4)
        : [];

    private static IEnumerable<OfferedChange> InPlace(Spot spot, Fact line, Block block)
    {
        if (Estimates(spot, block).FirstOrDefault(found => found.Read.Fact == line.Declaration) is { Text: { } text, Read: { } read })
        {
            var hasComment = spot.Syntax.Comment is not null;
            var place = new FilePlace(spot.File.Id, spot.RangeOf(line.Value!.Span));
            yield return new OfferedChange($"Write the estimate out: {text}", ChangeSort.Rewrite, place, hasComment ? text : text + Comment(read));
        }
    }

    private static IEnumerable<OfferedChange> NewLines(Spot spot, Block block, int line, int indent)
    {
        var at = new LinePosition(spot.Position.Line - spot.Line + line, spot.Own.Syntax.Lines[line].Text.Length);
        foreach (var (read, text) in Estimates(spot, block).Where(found => found.Read.Line is null).Take(Most))
        {
            var written = $"{FixEdits.BreakOf(spot.File.Syntax)}{new string(' ', indent)}{read.Fact.Keyword} {text}{Comment(read)}";
            yield return new OfferedChange($"Write the estimate out: `{read.Fact.Keyword} {text}`", ChangeSort.Rewrite, new FilePlace(spot.File.Id, new LineRange(at, at)), written);
        }
    }

    /// <summary>What the rigs read of the block's estimates, each fact once: the first rig's figure, with the half-width that the estimate is known to have.</summary>
    private static IEnumerable<(FactRead Read, string Text)> Estimates(Spot spot, Block block)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var rig in Subjects.Rigs(spot.View, spot.Linked!))
        {
            var units = SubjectUnits.Of(rig, spot.State.Units);
            foreach (var read in Reads(rig).Where(read => read.Block.Path == block.Path && read is { Origin: ReadOrigin.Estimate, Fact.Kind: not null } && !double.IsNaN(read.Value)))
            {
                if (seen.Add(read.Fact.Keyword))
                {
                    var spread = read.Fact.Estimate?.Spread is { } share && !read.Fact.Kind!.Dimension.IsNone ? $" ± {QuantityWriter.Write(share, QuantityKinds.Ratio.Metric, 0)}" : "";
                    yield return (read, units.Write(read.Value, read.Fact.Kind!) + spread);
                }
            }
        }
    }

    private static IEnumerable<FactRead> Reads(RigStudy rig) => Ground.Of(Catalogue.Of(ResultScope.Rig).Select(result => result.Compute(rig)).OfType<Node>());

    private static string Comment(FactRead read) => $"  # estimate: {read.Fact.Estimate!.Words}";

    private static Block? BlockOf(Block root, Fact opener) => root.WithInner().FirstOrDefault(block => ReferenceEquals(block.Opener, opener));
}

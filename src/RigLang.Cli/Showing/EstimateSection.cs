using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Reasons;

namespace RigLang.Cli.Showing;

/// <summary>What stood in for facts that nobody wrote, and where a line would replace it.</summary>
internal static class EstimateSection
{
    public static Section Of(Subject subject, UnitChoice units)
    {
        var nodes = subject.Parts.SelectMany(part => Catalogue.Results.Select(result => result.Compute(part))).OfType<Node<double>>().Where(node => node.Applies && node.IsEstimated);
        var rows = Ground.Of(nodes).Where(read => read.IsEstimated).DistinctBy(read => (read.Block.Path, read.Fact)).Select(read => new Row(
            read.Fact.Keyword,
            double.IsNaN(read.Value) || read.Fact.Kind is not { } kind ? "" : units.Write(read.Value, kind),
            $"{(BlockWords.Of(read.Block) is { Length: > 0 } owner ? owner : "any rig")}: {(read.Fact.Estimate is { } estimate ? estimate.Words : read.Fact.Otherwise)}"));
        return new Section("Estimated, until a line says better", [.. rows]);
    }
}

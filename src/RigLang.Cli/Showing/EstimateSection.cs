using RigLang.Editing.Reasons;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;

namespace RigLang.Cli.Showing;

/// <summary>What stood in for facts that nobody wrote, and where a line would replace it.</summary>
internal static class EstimateSection
{
    public static Section Of(Subject subject, UnitChoice units)
    {
        var reads = subject.Parts.SelectMany(part => Catalogue.Results.Select(result => result.Compute(part))).OfType<Node<double>>()
            .Where(node => node.Applies && node.IsEstimated).SelectMany(FactsRead.By).Where(read => read.IsEstimated);
        var rows = reads.DistinctBy(read => (read.Block.Path, read.Fact)).Select(read => new Row(
            read.Fact.Keyword,
            double.IsNaN(read.Value) || read.Fact.Kind is not { } kind ? "" : units.Write(read.Value, kind),
            $"{Owner(read)}: {(read.Fact.Estimate is { } estimate ? estimate.Words : read.Fact.Otherwise)}"));
        return new Section("Estimated, until a line says better", [.. rows]);
    }

    private static string Owner(FactRead read)
    {
        var words = new MissingFact(read.Block, read.Fact).Words;
        return words.IndexOf(" of ", StringComparison.Ordinal) is var at and >= 0 ? words[(at + 4)..] : "any rig";
    }
}

using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>The checks of a logged drive.</summary>
public static class RunChecks
{
    public static ImmutableArray<Check> All { get; } = [new ModelOffRun(), new RunIncomplete(), new WallBelowUse(), new UseOfSomethingElse(), new RunsSayOtherwise(), new RunsTooAlike(), new NoCoastDown()];
}

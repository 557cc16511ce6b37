using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Editing.Reasons;

namespace RigLang.Cli.Showing;

/// <summary>What the logged drives of a rig say together.</summary>
internal static class RunSetSheet
{
    /// <summary>Nothing where no drive is in sight.</summary>
    public static IEnumerable<Section> Sections(RunSetStudy? runs, UnitChoice units) => runs is null
        ? []
        : [ResultRows.Of($"Fitted to {(runs.Runs.Length == 1 ? "the one run" : $"the {runs.Runs.Length} runs")} in sight", RunSetResults.Set.All, runs, units)];
}

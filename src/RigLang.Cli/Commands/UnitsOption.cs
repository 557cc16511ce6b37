using System.CommandLine;
using RigLang.Editing.Workspaces;

namespace RigLang.Cli.Commands;

/// <summary><c>--units</c>, the same wherever results are shown.</summary>
internal static class UnitsOption
{
    public static Option<string> Create()
    {
        var units = new Option<string>("--units") { HelpName = "written|metric|us", Description = "Units of the results; as the author of the facts writes if nothing is said." };
        units.AcceptOnlyFromAmong("written", "metric", "us");
        return units;
    }

    public static UnitHabit Habit(string? units) => units switch { "metric" => UnitHabit.Metric, "us" => UnitHabit.Us, _ => UnitHabit.AsWritten };
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A `fill` line names a tank that isn't built in.</summary>
public sealed class UnknownTank : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL313",
        Slug = "unknown-tank",
        Severity = Severity.Error,
        Summary = "A `fill` line names a tank that isn't built in.",
        Why = "A level weighs nothing without its tank: nobody knows how much it holds, of what, and where it sits.",
        Bad = RigExample.Pair.With(("        item stores", "        fill fresh 50 %\n        item stores")),
        Good = RigExample.Pair.With(("        item stores", "        fill fresh 50 %\n        item stores"), ("    brakes overrun", "    tank fresh 60 L water at axle\n    brakes overrun")),
        Fix = "Add a `tank` line to the vehicle or trailer, or name one of its tanks.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        foreach (var load in rig.Parts.Loads)
        {
            foreach (var carrier in LoadLines.Carriers)
            {
                if (LoadLines.Carrier(rig, carrier) is not { } owner)
                {
                    continue;
                }

                var tanks = LoadLines.TanksOf(owner).Select(tank => tank.Key).ToList();
                foreach (var fill in LoadLines.Of(load, carrier, CargoFacts.Load.Fill).Where(fill => !tanks.Contains(fill.Key)))
                {
                    yield return Report(rig, LoadLines.Naming(rig, load), $"`{fill.Title}` of load {load.Name}: {owner} has no such tank. {Known(tanks)}")
                        with { Related = [new Related(fill.Place, "the level")] };
                }
            }
        }
    }

    /// <summary>Which tanks there are, as a sentence.</summary>
    internal static string Known(IReadOnlyCollection<string> tanks) =>
        tanks.Count == 0 ? "None is built in; a `tank` line says where one is." : $"It has {string.Join(", ", tanks.Select(tank => $"`{tank}`"))}.";
}

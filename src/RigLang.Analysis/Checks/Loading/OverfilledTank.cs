using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A tank is filled with more than it holds.</summary>
public sealed class OverfilledTank : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL314",
        Slug = "overfilled-tank",
        Severity = Severity.Error,
        Summary = "A tank is filled with more than it holds.",
        Why = "Water is the heaviest thing that most people forget; a litre too many in the file is a kilogram too many on the axle.",
        Bad = RigExample.Pair.With(("        item stores", "        fill fresh 80 L\n        item stores"), ("    brakes overrun", "    tank fresh 60 L water at axle\n    brakes overrun")),
        Good = RigExample.Pair.With(("        item stores", "        fill fresh 40 L\n        item stores"), ("    brakes overrun", "    tank fresh 60 L water at axle\n    brakes overrun")),
        Fix = "Mend the level, or the volume of the `tank`.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        foreach (var load in rig.Parts.Loads)
        {
            foreach (var carrier in LoadLines.Carriers)
            {
                foreach (var fill in LoadLines.Of(load, carrier, CargoFacts.Load.Fill))
                {
                    if (LoadLines.Carrier(rig, carrier) is { } owner && LoadLines.TanksOf(owner).FirstOrDefault(tank => tank.Key == fill.Key) is { } tank && IsOver(fill, tank))
                    {
                        yield return Report(rig, LoadLines.Naming(rig, load), $"Load {load.Name}: {Message(fill, tank)}")
                            with { Related = [new Related(fill.Place, "the level"), new Related(tank.Place, "the tank")] };
                    }
                }
            }
        }
    }

    internal static bool IsOver(Fact fill, Fact tank) =>
        tank.MeasureOf("volume") is { } volume && Limits.Exceeds(Cargo.Level(fill, volume.Value), volume.Value);

    internal static string Message(Fact fill, Fact tank) =>
        $"`{fill.PlaceOf("tank").Text} {fill.PlaceOf("level").Text}` is more than the tank holds, {tank.MeasureOf("volume")!.Text}. Mend one of the two.";
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>Two loads of a rig have an item or a tank level of the same name.</summary>
public sealed class DoubledItem : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL315",
        Slug = "doubled-item",
        Severity = Severity.Error,
        Summary = "Two loads of a rig have an item or a tank level of the same name.",
        Why = "Both would count: the driver would sit in the vehicle twice. It happens when a second load is added under `like` and the first isn't taken out.",
        Bad = RigExample.Pair + """

                load july

            load july
                on vehicle
                    item people 150 kg at 1.40 m behind front-axle
            """,
        Good = RigExample.Pair,
        Fix = "Take one of the loads out with `without load NAME`, or give the two things different names.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        foreach (var carrier in LoadLines.Carriers)
        {
            var first = new Dictionary<string, (Declaration Load, Fact Line)>(StringComparer.Ordinal);
            foreach (var load in rig.Parts.Loads)
            {
                foreach (var line in LoadLines.Of(load, carrier, CargoFacts.Load.Item).Concat(LoadLines.Of(load, carrier, CargoFacts.Load.Fill)))
                {
                    if (!first.TryAdd(line.Title, (load, line)) && first[line.Title] is var other && other.Load != load)
                    {
                        yield return Report(
                            rig, LoadLines.Naming(rig, load),
                            $"`{line.Title}` on the {carrier} is in load {other.Load.Name} too and would count twice. Take one of the loads out, or rename one of the two.")
                            with { Related = [new Related(other.Line.Place, $"in load {other.Load.Name}"), new Related(line.Place, $"in load {load.Name}")] };
                    }
                }
            }
        }
    }
}

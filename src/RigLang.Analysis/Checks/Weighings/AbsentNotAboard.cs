using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;
using RigLang.Syntax;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>An `absent` line names nothing that is aboard.</summary>
public sealed class AbsentNotAboard : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL807",
        Slug = "absent-not-aboard",
        Severity = Severity.Error,
        Summary = "An `absent` line names nothing that is aboard.",
        Why = "It was meant to take somebody out of the sum, who is still in it.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
                    absent item driver
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass solo
                    scale front 1250 kg
                    scale rear 1150 kg
            """),
        Fix = "Name an item or a fill of the loads that count for this weighing.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        var aboard = weighing.Rig.Loads.SelectMany(load => load.AllBlocks(CargoFacts.Load.Block)).SelectMany(block => block.Facts).Select(line => line.Title).ToHashSet();
        foreach (var line in weighing.Passes.SelectMany(pass => pass.Block.All(PassFacts.Absent)).Where(line => line.IsComplete && !aboard.Contains(line.Key)))
        {
            var near = Spelling.Nearest(line.Key, aboard);
            yield return Report(line.Place, $"Nothing aboard is `{line.Key}`{(near is null ? "." : $"; did you mean `{near}`?")}");
        }
    }
}

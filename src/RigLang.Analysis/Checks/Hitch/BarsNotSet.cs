using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>Nothing says how the spring bars are set.</summary>
public sealed class BarsNotSet : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL417",
        Slug = "bars-not-set",
        Severity = Severity.Note,
        Summary = "Nothing says how the spring bars are set.",
        Why = "Slack bars do nothing and tight ones move hundreds of kilograms, so no axle load can be told before.",
        Bad = RigExample.Bars.With(("    restoration 50 %", "")),
        Good = RigExample.Bars,
        Fix = "Say what is wanted or set: `restoration 50 %`, or `couple`, or `bar-force`.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.HasTrailer && rig.IsDistributing && BarSetting.Lines(rig).Count == 0)
        {
            yield return Report(rig, RigFacts.Hitch, "The hitch has spring bars, and nothing says how they are set: add `restoration`, `couple` or `bar-force`. Until then no axle load is known.");
        }
    }
}

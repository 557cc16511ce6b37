using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A rig sets spring bars, but its hitch has none.</summary>
public sealed class BarsOnCarryingHitch : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL408",
        Slug = "bars-on-carrying-hitch",
        Severity = Severity.Warning,
        Summary = "A rig sets spring bars, but its hitch has none.",
        Why = "The line changes nothing, while its author counts on a front axle that is brought back down.",
        Bad = RigExample.Bars.With(("type weight-distributing", "type weight-carrying")),
        Good = RigExample.Bars,
        Fix = "Name a hitch of `type weight-distributing`, or take the line out.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        // A hitch that isn't found, or has no type yet, is reported as that.
        if (rig.IsDistributing || (rig.HasHitch && rig.Hitch.Find(HitchFacts.Type)?.WordOf(Signature.ValueRole) is null))
        {
            yield break;
        }

        foreach (var line in BarSetting.Lines(rig).Where(line => IsOwn(rig, line)))
        {
            var hitch = rig.Parts.Hitch is { } named ? $"{named} only carries" : "the rig names no hitch";
            yield return Report(rig, line, $"`{line.Declaration.Keyword}` is about spring bars, but {hitch}. The line changes nothing.");
        }
    }
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>Nothing says how far behind the receiver's pin the ball is.</summary>
public sealed class HitchWithoutReach : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL406",
        Slug = "hitch-without-reach",
        Severity = Severity.Warning,
        Summary = "Nothing says how far behind the receiver's pin the ball is.",
        Why = "From rear axle to ball is the lever with which the trailer works on the vehicle; behind a receiver it is the pin's overhang and the hitch's reach together.",
        Bad = RigExample.Bars.With(("    reach 10 in\n", "")),
        Good = RigExample.Bars,
        Fix = "Measure from the pin hole to the middle of the ball and write it as `reach`.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (!rig.HasTrailer || rig.Vehicle.Find(VehicleFacts.Overhang) is not null || rig.Vehicle.Find(VehicleFacts.PinOverhang) is not { } pin)
        {
            yield break;
        }

        if (!rig.HasHitch)
        {
            yield return Report(rig, RigFacts.Trailer, "The vehicle has a receiver, and the rig names no hitch: nothing says where the ball is. Add a `hitch` with `reach`.")
                with { Related = [new Related(pin.Place, "the receiver's pin")] };
        }
        else if (rig.Parts.Hitch is { } hitch && hitch.Block.Find(HitchFacts.Reach) is null)
        {
            yield return Report(rig, RigFacts.Hitch, $"{hitch} has no `reach`, so the ball's place behind the receiver isn't known. Measure from the pin hole to the middle of the ball.")
                with { Related = [new Related(pin.Place, "the receiver's pin")] };
        }
    }
}

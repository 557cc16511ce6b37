using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The hitch's shank and the receiver are of different sizes.</summary>
public sealed class ShankSizeMismatch : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL404",
        Slug = "shank-size-mismatch",
        Severity = Severity.Error,
        Summary = "The hitch's shank and the receiver are of different sizes.",
        Why = "A shank that rattles in its tube wears the pin and hammers the receiver; one that is too large doesn't go in.",
        Bad = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    receiver-size 2.5 in"), ("    reach 10 in", "    shank-size 2 in\n    reach 10 in")),
        Good = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    receiver-size 2.5 in"), ("    reach 10 in", "    shank-size 2.5 in\n    reach 10 in")),
        Fix = "Use a hitch of the receiver's size; a sleeve only where receiver and hitch makers allow one.",
    };

    /// <summary>A shank this much smaller still counts as of the tube's size (our choice).</summary>
    private const double Play = 0.001;

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.Hitch.Find(HitchFacts.ShankSize) is not { } shank || shank.MeasureOf(Signature.ValueRole) is not { } size
            || rig.Vehicle.Find(VehicleFacts.ReceiverSize) is not { } tube || tube.MeasureOf(Signature.ValueRole) is not { } inside || Math.Abs(size.Value - inside.Value) <= Play)
        {
            yield break;
        }

        var isLoose = size.Value < inside.Value;
        var advice = isLoose ? "It needs a sleeve that both makers allow, or a hitch of that size." : "It doesn't go in: use a hitch of that size.";
        yield return Report(rig, RigFacts.Hitch, $"The hitch's shank is {size.Text}, the receiver is {inside.Text} inside. {advice}")
            with
        {
            Severity = isLoose ? Severity.Warning : Severity.Error,
            Related = [new Related(shank.Place, "the shank"), new Related(tube.Place, "the receiver")],
        };
    }
}

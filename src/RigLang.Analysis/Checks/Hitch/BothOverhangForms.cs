using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A vehicle has both an `overhang` to a ball of its own and a `pin-overhang` of a receiver.</summary>
public sealed class BothOverhangForms : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL405",
        Slug = "both-overhang-forms",
        Severity = Severity.Error,
        Summary = "A vehicle has both an `overhang` to a ball of its own and a `pin-overhang` of a receiver.",
        Why = "The trailer hangs on one of the two, and the lever decides over every axle load.",
        Bad = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    overhang 58 in")),
        Good = RigExample.Bars,
        Fix = "Keep `overhang` for a fixed ball, or `pin-overhang` with a hitch that has `reach`. A vehicle with both is two vehicles: one `like` the other.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind == DeclarationKind.Vehicle && declaration.Block.Find(VehicleFacts.Overhang) is { } ball && declaration.Block.Find(VehicleFacts.PinOverhang) is { } pin
            && new[] { pin, ball }.FirstOrDefault(line => line.Place.Declaration == declaration.Own.Syntax) is { } own)
        {
            yield return Report(
                own.Place, "`overhang` is to a ball of the vehicle's own, `pin-overhang` to the pin of a receiver. Only one of them can count; take the other out.")
                with { Related = [new Related((own == pin ? ball : pin).Place, "the other one")] };
        }
    }
}

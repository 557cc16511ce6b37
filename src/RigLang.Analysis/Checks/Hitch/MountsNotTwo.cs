using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A receiver has one mount, or more than two.</summary>
public sealed class MountsNotTwo : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL407",
        Slug = "mounts-not-two",
        Severity = Severity.Error,
        Summary = "A receiver has one mount, or more than two.",
        Why = "Two lines across the chassis share the forces in one way only; with one or three of them nobody can tell who carries what.",
        Bad = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    mount rear at 3 in behind pin")),
        Good = RigExample.Bars.With(("    pin-overhang 48 in", "    pin-overhang 48 in\n    mount rear at 3 in behind pin\n    mount forward at 20 in ahead of pin")),
        Fix = "Write two `mount` lines: the rearmost row of bolts and the foremost.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind == DeclarationKind.Vehicle && declaration.Block.All(VehicleFacts.Mount) is { Length: 1 or > 2 } mounts && mounts[^1].Place.Declaration == declaration.Own.Syntax)
        {
            var count = mounts.Length == 1 ? "one mount" : $"{mounts.Length} mounts";
            yield return Report(mounts[^1].Place, $"The receiver has {count}; forces are known for exactly two. Write its rearmost row of bolts and its foremost.")
                with { Related = [.. mounts.SkipLast(1).Select(mount => new Related(mount.Place, "another mount"))] };
        }
    }
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A hitch says both `drop` and `rise`.</summary>
public sealed class DropAndRise : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL416",
        Slug = "drop-and-rise",
        Severity = Severity.Error,
        Summary = "A hitch says both `drop` and `rise`.",
        Why = "The ball is either lower or higher than the receiver.",
        Bad = RigExample.Bars.With(("    reach 10 in", "    reach 10 in\n    drop 4 in\n    rise 1 in")),
        Good = RigExample.Bars.With(("    reach 10 in", "    reach 10 in\n    drop 4 in")),
        Fix = "Keep `drop` where the ball is below the inside top of the tube, `rise` where it is above.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind == DeclarationKind.Hitch && declaration.Block.Find(HitchFacts.Drop) is { } drop && declaration.Block.Find(HitchFacts.Rise) is { } rise
            && new[] { rise, drop }.FirstOrDefault(line => line.Place.Declaration == declaration.Own.Syntax) is { } own)
        {
            yield return Report(own.Place, "A ball is lower than the top of the tube (`drop`) or higher (`rise`), not both. Take one of the lines out.")
                with { Related = [new Related((own == rise ? drop : rise).Place, "the other one")] };
        }
    }
}

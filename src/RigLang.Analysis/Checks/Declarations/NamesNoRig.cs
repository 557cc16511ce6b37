using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Declarations;

/// <summary>A trip, weighing or run names no rig, or a rig no vehicle.</summary>
public sealed class NamesNoRig : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL172",
        Slug = "names-no-rig",
        Severity = Severity.Warning,
        Summary = "A trip, weighing or run names no rig, or a rig names no vehicle.",
        Why = "Nothing of it can be computed, and none of its expectations is tested.",
        Bad = """
            vehicle van

            rig solo
                vehicle van

            trip out
                start home
            """,
        Good = """
            vehicle van

            rig solo
                vehicle van

            trip out
                rig solo
                start home
            """,
        Fix = "Name it on a line of its own: `rig NAME`, `vehicle NAME`.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        // A line in error may be the one that names it.
        if (Wanted(declaration.Kind) is { } fact && declaration.Block.Find(fact) is null && !Judgeable.IsInError(declaration))
        {
            yield return Report(declaration.Own.NamePlace, $"No line says which {fact.Keyword} {declaration} is of, so nothing is computed. Write `{fact.Keyword} NAME`.");
        }
    }

    private static FactDeclaration? Wanted(DeclarationKind kind) => kind switch
    {
        DeclarationKind.Rig => RigFacts.Vehicle,
        DeclarationKind.Trip => TripFacts.Rig,
        DeclarationKind.Weighing => WeighingFacts.Rig,
        DeclarationKind.Run => RunFacts.Rig,
        _ => null,
    };
}

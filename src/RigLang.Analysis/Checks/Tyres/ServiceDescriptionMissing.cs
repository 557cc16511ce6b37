using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>A tyre's size is written without load index and speed symbol.</summary>
public sealed class ServiceDescriptionMissing : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL506",
        Slug = "service-description-missing",
        Severity = Severity.Note,
        Summary = "A tyre's size is written without load index and speed symbol.",
        Why = "The size alone says nothing of what a tyre carries: one size comes with load indices that lie hundreds of kilograms apart.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17\n        pressure 250 kPa")),
        Good = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 250 kPa")),
        Fix = "Read on after the size on the sidewall: `101H` is load index 101 and speed symbol H.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var line in declaration.Block.WithInner().SelectMany(block => block.Facts))
        {
            // A spare isn't rolling; what it carries is asked of the tyres in use.
            if (line is { Declaration.Keyword: "tyres", Value: TyreValue { Service: null } } && line.Place.Declaration == declaration.Own.Syntax)
            {
                yield return Report(line.PlaceOf(Signature.ValueRole), "What these tyres carry isn't known: add load index and speed symbol from the sidewall, such as `101H`.");
            }
        }
    }
}

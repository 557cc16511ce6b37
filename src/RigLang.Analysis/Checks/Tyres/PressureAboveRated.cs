using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>A tyre's pressure is above the one at which its load index holds.</summary>
public sealed class PressureAboveRated : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL505",
        Slug = "pressure-above-rated",
        Severity = Severity.Note,
        Summary = "A tyre's pressure is above the one at which its load index holds.",
        Why = "More pressure doesn't raise its rating; it only makes the tyre hard. The sidewall says which pressure is the most.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 320 kPa\n        rated-pressure 250 kPa")),
        Good = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 250 kPa\n        rated-pressure 250 kPa")),
        Fix = "Check both against the sidewall; 2.9 bar or 42 psi is where an XL tyre is rated.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var axle in declaration.Block.Blocks)
        {
            if (declaration.Kind is not (DeclarationKind.Vehicle or DeclarationKind.Trailer) || axle.Declaration.Keyword != "axle")
            {
                continue;
            }

            var facts = AxleFacts.Of(axle.Declaration);
            if (axle.Find(facts.Pressure) is { } line && line.MeasureOf(Signature.ValueRole) is { } pressure && line.Place.Declaration == declaration.Own.Syntax
                && axle.Find(facts.RatedPressure) is { } limit && limit.MeasureOf(Signature.ValueRole) is { } rated && Limits.Exceeds(pressure.Value, rated.Value))
            {
                yield return Report(line.Place, $"{pressure.Text} is above the tyre's `rated-pressure`, {rated.Text}. It carries no more for it; check the sidewall for the most that it may be.")
                    with { Related = [new Related(limit.Place, "the rated pressure")] };
            }
        }
    }
}

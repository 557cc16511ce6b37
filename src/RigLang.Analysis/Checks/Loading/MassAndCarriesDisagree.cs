using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>The mass of a vehicle and what its axles carry are different.</summary>
public sealed class MassAndCarriesDisagree : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL312",
        Slug = "mass-and-carries-disagree",
        Severity = Severity.Warning,
        Summary = "The mass of a vehicle and what its axles carry are different.",
        Why = "Both come off a scale, and both axles together are the vehicle. Where they differ, one is from another day or another load, and everything that follows is off by as much.",
        Bad = RigExample.Pair.With(("    overhang 1.10 m", "    overhang 1.10 m\n    mass 2200 kg")),
        Good = RigExample.Pair.With(("    overhang 1.10 m", "    overhang 1.10 m\n    mass 2400 kg")),
        Fix = "Keep the figures of one weighing: either `mass` with `front-share`, or what each axle `carries`.",
    };

    /// <summary>Scales differ by as much from one day to the next (our choice), where no ± says otherwise.</summary>
    private const double Tolerance = 0.005;

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind != DeclarationKind.Vehicle || declaration.Block.Find(VehicleFacts.Mass) is not { } line || line.MeasureOf(Signature.ValueRole) is not { } mass)
        {
            yield break;
        }

        var carries = declaration.Block.AllBlocks(AxleFacts.Vehicle.Block).Select(axle => axle.Find(AxleFacts.Vehicle.Carries!)).OfType<Fact>().ToList();
        var measures = carries.Select(axle => axle.MeasureOf(Signature.ValueRole)).OfType<Measure>().ToList();
        var isOwn = line.Place.Declaration == declaration.Own.Syntax || carries.Exists(axle => axle.Place.Declaration == declaration.Own.Syntax);
        if (measures.Count != 2 || !isOwn)
        {
            yield break;
        }

        var sum = measures.Sum(axle => axle.Value);
        var allowed = Math.Max(mass.HalfWidth + measures.Sum(axle => axle.HalfWidth), Tolerance * mass.Value);
        if (Limits.Exceeds(Math.Abs(sum - mass.Value), allowed))
        {
            var place = line.Place.Declaration == declaration.Own.Syntax ? line.Place : declaration.Own.NamePlace;
            yield return Report(place, $"The axles carry {QuantityWriter.WriteLike(sum, mass)} together, but `mass` says {mass.Text}. What the axles carry counts; take one of the two out.")
                with { Related = [.. carries.Select(axle => new Related(axle.Place, "what this axle carries"))] };
        }
    }
}

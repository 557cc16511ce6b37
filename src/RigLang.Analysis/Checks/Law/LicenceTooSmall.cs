using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>The driver's licence doesn't cover the combination.</summary>
public sealed class LicenceTooSmall() : LawCheck("de", "eu")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL323",
        Slug = "licence-too-small",
        Severity = Severity.Error,
        Summary = "The driver's licence doesn't cover the combination.",
        Why = "It goes by the gross masses in the papers, not by what is loaded. Driving without the licence is a crime in some countries, and the insurer may want its money back.",
        Bad = RigExample.Ruled("de").With(("speed 80 km/h", "speed 80 km/h\n    licence b")),
        Good = RigExample.Ruled("de").With(("speed 80 km/h", "speed 80 km/h\n    licence be")),
        Fix = "Take the training or test for the wider licence, or a trailer with a lower gross mass on its papers.",
        Source = "directive 2006/126/EC as German law carries it (FeV 6, 6a), read in the state of 2022-03-26",
    };

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (rig.Rig.Find(RigFacts.Licence) is not { } line || line.WordOf(Signature.ValueRole) is not { } held || Written(rig.Vehicle, VehicleFacts.GrossRating) is not { } vehicle)
        {
            yield break;
        }

        var trailer = rig.HasTrailer ? Written(rig.Trailer, TrailerFacts.GrossRating) : null;
        if (rig.HasTrailer && trailer is null)
        {
            yield break;
        }

        var needed = EuropeanLicence.Needed(vehicle.Value, trailer?.Value ?? 0);
        if (needed > Category(held))
        {
            var masses = trailer is null ? vehicle.Text : $"{vehicle.Text} and {trailer.Text}";
            yield return Report(rig, line, $"Gross masses of {masses} ask for {Words(needed)}, the driver has {held.ToUpperInvariant()} (directive 2006/126/EC, {AsRead}).");
        }
    }

    private static LicenceCategory Category(string word) => word switch { "b" => LicenceCategory.B, "b96" => LicenceCategory.B96, _ => LicenceCategory.BE };

    private static string Words(LicenceCategory needed) => needed == LicenceCategory.Larger ? "a licence for larger vehicles" : $"licence {needed}";
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>A trailer without brakes is heavier than law allows.</summary>
public sealed class UnbrakedTooHeavy() : LawCheck("de", "us")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL321",
        Slug = "unbraked-too-heavy",
        Severity = Severity.Error,
        Summary = "A trailer without brakes is heavier than law allows.",
        Why = "All of it has to be stopped by the tow vehicle's brakes, and it pushes where the road is wet.",
        Bad = RigExample.Ruled("de").With(("overhang 1.10 m", "overhang 1.10 m\n    kerb-mass 1900 kg"), ("brakes overrun", "brakes none"), ("towing-rating 2300 kg", "towing-rating 2300 kg\n    towing-rating-unbraked 2000 kg")),
        Good = RigExample.Ruled("de").With(("overhang 1.10 m", "overhang 1.10 m\n    kerb-mass 1900 kg")),
        Fix = "Leave load behind, or use a trailer with brakes.",
        Source = "StVZO section 42(2), read in the state of 2022-03-26; 49 CFR 393.42(b)(3), value from memory",
    };

    /// <summary>Where no kerb mass is written the law's own ceiling holds all the same.</summary>
    private const double GermanCeiling = 750;

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (!rig.HasTrailer || Word(rig.Trailer, TrailerFacts.Brakes) != "none")
        {
            return [];
        }

        return rules == "de" ? German(rig) : American(rig);
    }

    private IEnumerable<Finding> German(RigStudy rig)
    {
        var limit = Written(rig.Vehicle, VehicleFacts.KerbMass) is { } kerb ? GermanTowing.LargestUnbraked(kerb.Value) : GermanCeiling;
        if (Known(rig.Compute(LoadResults.TrailerLoad, rig)) is { } trailer && Limits.Exceeds(trailer.Value, limit))
        {
            yield return Report(
                rig, RigFacts.Trailer,
                $"The loaded trailer has no brakes and weighs {Mass(rig, trailer.Value)}{Mark(trailer)}; {Mass(rig, limit)} is the most that German law allows without brakes behind this vehicle (StVZO 42(2), {AsRead}).");
        }
    }

    private IEnumerable<Finding> American(RigStudy rig)
    {
        var trailer = Known(rig.Compute(LoadResults.TrailerAxleLoad, rig));
        var vehicle = Known(rig.Compute(LoadResults.VehicleLoad, rig));
        if (trailer is not null && vehicle is not null && Written(rig.Trailer, TrailerFacts.GrossRating) is { } gross
            && UsRatings.MayBeUnbraked(gross.Value, trailer.Value, vehicle.Value) == false)
        {
            yield return Report(
                rig, RigFacts.Trailer,
                "The trailer has no brakes; federal rules for commercial vehicles allow that up to 3000 lb gross and with at most 40 % of the vehicle's axle loads on its axles (49 CFR 393.42(b)(3), value from memory). Each state has its own limit for private ones; look it up.") with
            {
                Severity = Severity.Warning,
            };
        }
    }
}

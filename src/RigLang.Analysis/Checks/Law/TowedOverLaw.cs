using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>A braked trailer weighs more than German law lets a car tow.</summary>
public sealed class TowedOverLaw() : LawCheck("de")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL320",
        Slug = "towed-over-law",
        Severity = Severity.Error,
        Summary = "A braked trailer weighs more than German law lets a car tow.",
        Why = "Above the maker's figure stands the law's: no more than the car's own gross mass, one and a half times for off-road vehicles, and never above 3500 kg.",
        Bad = RigExample.Ruled("de").With(("gross-rating 2950 kg", "gross-rating 1590 kg")),
        Good = RigExample.Ruled("de"),
        Fix = "Leave load behind, or tow it with a heavier vehicle.",
        Source = "StVZO section 42(1), read in the state of 2022-03-26",
    };

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (!rig.HasTrailer || Word(rig.Trailer, TrailerFacts.Brakes) is null or "none" || Known(rig.Compute(LoadResults.TrailerLoad, rig)) is not { } trailer
            || Written(rig.Vehicle, VehicleFacts.GrossRating) is not { } gross)
        {
            yield break;
        }

        // Which vehicle is an off-road one stands in its papers only; the shape says which may be.
        var mayBeOffRoad = Word(rig.Vehicle, VehicleFacts.Body) is null or "suv" or "pick-up";
        var limit = GermanTowing.LargestBraked(gross.Value, offRoad: false);
        if (!Limits.Exceeds(trailer.Value, limit))
        {
            yield break;
        }

        var isOver = !mayBeOffRoad || Limits.Exceeds(trailer.Value, GermanTowing.LargestBraked(gross.Value, offRoad: true));
        var unless = isOver ? "" : " unless its papers call the vehicle an off-road one";
        yield return Report(
            rig, RigFacts.Trailer,
            $"The loaded trailer weighs {Mass(rig, trailer.Value)}{Mark(trailer)}; {Mass(rig, limit)} is the most that German law lets this vehicle tow{unless} (StVZO 42(1), {AsRead}).") with
        {
            Severity = isOver ? Severity.Error : Severity.Warning,
        };
    }
}

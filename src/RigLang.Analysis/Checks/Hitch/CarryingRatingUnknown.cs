using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>The rating that holds without weight distribution isn't written.</summary>
public sealed class CarryingRatingUnknown : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL415",
        Slug = "carrying-rating-unknown",
        Severity = Severity.Warning,
        Summary = "The rating that holds without weight distribution isn't written.",
        Why = "Many makers allow far less when the hitch only carries. The higher figure from the brochure is for spring bars, and doesn't count here.",
        Bad = RigExample.Bars.With(("type weight-distributing", "type weight-carrying"), ("    restoration 50 %", "")),
        Good = RigExample.Bars.With(("type weight-distributing", "type weight-carrying"), ("    restoration 50 %", ""), ("    tongue-rating 900 lb", "    tongue-rating 900 lb\n    towing-rating-carrying 6000 lb\n    tongue-rating-carrying 700 lb")),
        Fix = "Look in the handbook or on the receiver's label for the rating without weight distribution, and write it; write the same figure where the maker makes no difference.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        var unknown = RatingTable.Of(rig)
            .Where(line => line.Limit is null && line.Rating.IsAskedFor && (line.Rating.Limit == VehicleFacts.TowingRatingCarrying || line.Rating.Limit == VehicleFacts.TongueRatingCarrying))
            .Select(line => line.Rating.Limit.Keyword).ToList();
        if (unknown.Count > 0 && rig.Parts.Vehicle is { } vehicle)
        {
            yield return Report(
                rig, RigFacts.Vehicle,
                $"The rig goes without weight distribution, and {vehicle} doesn't say its {string.Join(" and its ", unknown.Select(keyword => $"`{keyword}`"))}. The higher rating doesn't count for it.");
        }
    }
}

using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Ratings;

/// <summary>How much of the ratings is used, and what is left.</summary>
public static class RatingResults
{
    private const string Definition = "definition; ratings are ceilings, not aims";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> RatingUse { get; } = Set.Add(
        "rating-use", QuantityKinds.Ratio, "Most used rating", "the largest share of any rating that is used; the reasons name which",
        "largest of each load ÷ its rating", Definition,
        (read, rig) =>
        {
            var uses = RigRatings.Of(rig).Where(rating => rating.CountsInUse).Select(rating => UseOf(read, rating)).Where(use => !double.IsNaN(use)).ToList();
            if (uses.Count > 0)
            {
                return uses.Max();
            }

            read.Need(rig.Vehicle, VehicleFacts.GrossRating);
            return double.NaN;
        });

    public static ResultDeclaration<RigStudy> PayloadLeft { get; } = Set.Add(
        "payload-left", QuantityKinds.Mass, "Payload left", "what the vehicle may still take by its gross rating, and by its placard if that is less; an axle may say less",
        "gross-rating − vehicle-load, or cargo-rating − cargo-load", Definition,
        (read, rig) =>
        {
            var byGross = read.Quantity(rig.Vehicle, VehicleFacts.GrossRating) - read.Get(LoadResults.VehicleLoad, rig);
            return read.QuantityIfKnown(rig.Vehicle, VehicleFacts.CargoRating) is { } placard && read.GetIfKnown(CargoResults.CargoLoad, rig) is { } cargo
                ? Math.Min(byGross, placard - cargo)
                : byGross;
        });

    public static ResultDeclaration<RigStudy> TrailerCargoLeft { get; } = Set.Add(
        "trailer-cargo-left", QuantityKinds.Mass, "Trailer may still take", "by its gross rating, and by its placard if that is less; its axles may say less",
        "gross-rating − trailer-load, or cargo-rating − trailer-cargo", Definition,
        (read, rig) => LoadResults.Trailing(read, rig, () =>
        {
            var byGross = read.Quantity(rig.Trailer, TrailerFacts.GrossRating) - read.Get(LoadResults.TrailerLoad, rig);
            return read.QuantityIfKnown(rig.Trailer, TrailerFacts.CargoRating) is { } placard && read.GetIfKnown(CargoResults.TrailerCargo, rig) is { } cargo
                ? Math.Min(byGross, placard - cargo)
                : byGross;
        }));

    /// <summary>NaN where load or rating is unknown, or the rating doesn't apply.</summary>
    private static double UseOf(Reader read, Rating rating)
    {
        var load = rating.Load switch
        {
            ResultDeclaration<RigStudy> result when rating.Subject is RigStudy rig => read.GetIfKnown(result, rig),
            ResultDeclaration<AxleSubject> result when rating.Subject is AxleSubject axle => read.GetIfKnown(result, axle),
            _ => null,
        };
        var use = load is { } value && read.QuantityIfKnown(rating.Owner, rating.Limit) is { } limit ? value / limit : double.NaN;
        return rating.IsCeilingOnly && !Limits.Exceeds(use, 1) ? double.NaN : use;
    }
}

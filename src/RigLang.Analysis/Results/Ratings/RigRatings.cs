using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Ratings;

/// <summary>
/// Every rating that applies to a rig as it is configured. One list serves the table of room, the worst use and the checks; a new rating is added here.
/// Where a maker tells carrying and distributing hitches apart, or braked and unbraked trailers, the rating for what is driven counts and never the higher one.
/// </summary>
public static class RigRatings
{
    public static IEnumerable<Rating> Of(RigStudy rig)
    {
        foreach (var axle in rig.Axles)
        {
            yield return new Rating($"{(axle.IsTrailer ? "Trailer axle" : "Axle")} {axle.Axle.Key}", AxleResults.Load, axle, axle.Axle, axle.Facts.AxleRating, RatingFamily.Axle);
        }

        var vehicle = rig.Vehicle;
        yield return new Rating("Vehicle, gross", LoadResults.VehicleLoad, rig, vehicle, VehicleFacts.GrossRating, RatingFamily.Gross);
        yield return new Rating("Vehicle, cargo", CargoResults.CargoLoad, rig, vehicle, VehicleFacts.CargoRating, RatingFamily.Cargo);
        yield return new Rating("Roof", CargoResults.RoofCargo, rig, vehicle, VehicleFacts.RoofRating, RatingFamily.Roof);
        foreach (var rating in rig.HasTrailer ? WithTrailer(rig) : [])
        {
            yield return rating;
        }
    }

    private static IEnumerable<Rating> WithTrailer(RigStudy rig)
    {
        var (vehicle, trailer, hitch) = (rig.Vehicle, rig.Trailer, rig.Hitch);
        yield return new Rating("Vehicle and trailer", LoadResults.TrainLoad, rig, vehicle, VehicleFacts.CombinedRating, RatingFamily.Combined);
        yield return new Rating("Trailer, gross", LoadResults.TrailerLoad, rig, trailer, TrailerFacts.GrossRating, RatingFamily.TrailerGross);
        yield return new Rating("Trailer, cargo", CargoResults.TrailerCargo, rig, trailer, TrailerFacts.CargoRating, RatingFamily.Cargo);
        yield return new Rating("Towing, by the vehicle", LoadResults.TrailerLoad, rig, vehicle, TowingLimit(rig), RatingFamily.Towing);
        yield return new Rating("Tongue, by the vehicle", LoadResults.TongueLoad, rig, vehicle, Carrying(rig, VehicleFacts.TongueRatingCarrying) ?? VehicleFacts.TongueRating, RatingFamily.Tongue);
        yield return new Rating("Tongue, by the coupling", LoadResults.TongueLoad, rig, trailer, TrailerFacts.TongueRating, RatingFamily.Tongue);
        yield return new Rating("Coupling head", LoadResults.TrailerLoad, rig, trailer, TrailerFacts.CouplingRating, RatingFamily.Ball);
        yield return new Rating("Receiver mounts", CargoResults.MountPeak, rig, vehicle, VehicleFacts.MountRating, RatingFamily.Mount);
        if (rig.HasHitch)
        {
            yield return new Rating("Towing, by the hitch", LoadResults.TrailerLoad, rig, hitch, HitchFacts.TowingRating, RatingFamily.Towing);
            yield return new Rating("Tongue, by the hitch", LoadResults.TongueLoad, rig, hitch, HitchFacts.TongueRating, RatingFamily.Tongue);
            yield return new Rating("Ball", LoadResults.TrailerLoad, rig, hitch, HitchFacts.BallRating, RatingFamily.Ball);
        }
    }

    private static FactDeclaration TowingLimit(RigStudy rig) =>
        rig.Trailer.Find(TrailerFacts.Brakes)?.WordOf(Signature.ValueRole) == "none"
            ? VehicleFacts.TowingRatingUnbraked
            : Carrying(rig, VehicleFacts.TowingRatingCarrying) ?? VehicleFacts.TowingRating;

    /// <summary>The maker's rating without weight distribution, where the rig has none and the maker tells the two apart.</summary>
    private static FactDeclaration? Carrying(RigStudy rig, FactDeclaration rating) => !rig.IsDistributing && rig.Vehicle.Find(rating)?.Value is MeasureValue ? rating : null;
}

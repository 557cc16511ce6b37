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
            var title = $"{(axle.IsTrailer ? "Trailer axle" : "Axle")} {axle.Axle.Key}";
            yield return new Rating(title, AxleResults.Load, axle, axle.Axle, axle.Facts.AxleRating, RatingFamily.Axle);
            yield return new Rating($"{title}, each tyre", TyreResults.Load, axle, axle.Axle, axle.Facts.Tyres, RatingFamily.Tyre) { LimitResult = TyreResults.Capacity };
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
        foreach (var rating in ByVehicle("Towing", LoadResults.TrailerLoad, RatingFamily.Towing, TowingLimit(rig), VehicleFacts.TowingRating)
            .Concat(ByVehicle("Tongue", LoadResults.TongueLoad, RatingFamily.Tongue, IsCarryingToldApart(rig) ? VehicleFacts.TongueRatingCarrying : VehicleFacts.TongueRating, VehicleFacts.TongueRating)))
        {
            yield return rating;
        }

        yield return new Rating("Tongue, by the coupling", LoadResults.TongueLoad, rig, trailer, TrailerFacts.TongueRating, RatingFamily.Tongue);
        yield return new Rating("Coupling head", LoadResults.TrailerLoad, rig, trailer, TrailerFacts.CouplingRating, RatingFamily.Ball);
        yield return new Rating("D-value, by the vehicle", HitchResults.DNeeded, rig, vehicle, VehicleFacts.DValue, RatingFamily.DValue);
        yield return new Rating("D-value, by the coupling", HitchResults.DNeeded, rig, trailer, TrailerFacts.DValue, RatingFamily.DValue);
        yield return new Rating("Receiver mounts", CargoResults.MountPeak, rig, vehicle, VehicleFacts.MountRating, RatingFamily.Mount);
        if (rig.HasHitch)
        {
            yield return new Rating("Towing, by the hitch", LoadResults.TrailerLoad, rig, hitch, HitchFacts.TowingRating, RatingFamily.Towing);
            yield return new Rating("Tongue, by the hitch", LoadResults.TongueLoad, rig, hitch, HitchFacts.TongueRating, RatingFamily.Tongue);
            yield return new Rating("D-value, by the hitch", HitchResults.DNeeded, rig, hitch, HitchFacts.DValue, RatingFamily.DValue);
            yield return new Rating("Ball", LoadResults.TrailerLoad, rig, hitch, HitchFacts.BallRating, RatingFamily.Ball);
        }

        if (rig.IsDistributing)
        {
            yield return new Rating("Spring bars", LoadResults.TongueLoad, rig, hitch, HitchFacts.BarRating, RatingFamily.Bars);
        }

        // The rating for what is driven; and, while that isn't written, the higher one, which holds all the same.
        IEnumerable<Rating> ByVehicle(string what, IResult load, RatingFamily family, FactDeclaration limit, FactDeclaration higher)
        {
            yield return new Rating($"{what}, by the vehicle", load, rig, vehicle, limit, family) { IsAskedFor = true };
            if (limit != higher && vehicle.Find(limit)?.Value is not MeasureValue)
            {
                yield return new Rating($"{what}, by the vehicle", load, rig, vehicle, higher, family) { IsAskedFor = false, IsCeilingOnly = true };
            }
        }
    }

    private static FactDeclaration TowingLimit(RigStudy rig) =>
        rig.Trailer.Find(TrailerFacts.Brakes)?.WordOf(Signature.ValueRole) == "none" ? VehicleFacts.TowingRatingUnbraked
        : IsCarryingToldApart(rig) ? VehicleFacts.TowingRatingCarrying
        : VehicleFacts.TowingRating;

    /// <summary>
    /// Whether the rig goes without weight distribution behind a vehicle whose maker has a rating of its own for that: one of the two is written, or the
    /// vehicle has a receiver, for which makers give both. A vehicle with a tow ball of its own has one rating.
    /// </summary>
    private static bool IsCarryingToldApart(RigStudy rig) =>
        !rig.IsDistributing
        && (rig.Vehicle.Find(VehicleFacts.TowingRatingCarrying) is not null || rig.Vehicle.Find(VehicleFacts.TongueRatingCarrying) is not null
            || (rig.Vehicle.Find(VehicleFacts.PinOverhang) is not null && rig.Vehicle.Find(VehicleFacts.Overhang) is null));
}

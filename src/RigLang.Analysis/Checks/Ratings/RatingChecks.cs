using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The checks of masses against ratings.</summary>
public static class RatingChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new AxleOverRating(), new VehicleOverGross(), new TrainOverCombined(), new TrailerOverGross(), new TrailerOverTowingRating(),
        new TongueOverRating(), new CouplingOverRating(), new CargoOverPlacard(), new RoofOverRating(), new RatingsMissing(),
        new AxlesBelowGross(), new TongueBelowLeast(), new RatingInDoubt(),
    ];
}

using System.Collections.Frozen;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Results.Braking;
using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Results.Weighings;

namespace RigLang.Analysis.Results;

/// <summary>All declared results. A new group of results is listed here; a new result only in its group.</summary>
public static class Catalogue
{
    /// <summary>By sort of subject, each in the order in which it is shown.</summary>
    public static IReadOnlyList<IResult> Results { get; } =
    [
        .. RatingResults.Set.All, .. LoadResults.Set.All, .. CargoResults.Set.All, .. RatioResults.Set.All, .. HitchResults.Set.All, .. TyreUseResult.Set.All,
        .. RoadResults.Set.All, .. PowerResults.Set.All, .. AccelerationResults.Set.All, .. AccelerationResults.RecalledSet.All, .. StabilityResults.Set.All, .. BrakingResults.Set.All, .. RolloverResults.Set.All,
        .. AxleResults.Set.All, .. TyreResults.Set.All,
        .. TripResults.Set.All, .. PlanResults.Set.All, .. LegResults.Set.All, .. LegHandling.Set.All, .. LegClimbing.Set.All, .. LegBraking.Set.All, .. StopResults.Set.All,
        .. RunResults.Set.All, .. RunSetResults.Set.All,
        .. WeighingResults.Set.All, .. WeighingFitResults.Set.All, .. ReadingResults.Set.All,
    ];

    private static readonly FrozenDictionary<string, IResult> ByName = Results.ToFrozenDictionary(result => result.Name, StringComparer.Ordinal);

    public static IResult? FindResult(string name) => ByName.GetValueOrDefault(name);

    public static IEnumerable<IResult> Of(ResultScope scope) => Results.Where(result => result.Scope == scope);
}

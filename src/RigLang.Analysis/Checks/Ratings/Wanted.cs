using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>What the first verdict on a rig still wants of one of its parts, in words.</summary>
internal static class Wanted
{
    private static readonly string[] VehicleAxles = ["front", "rear"];

    /// <summary>Of which each takes the other's place.</summary>
    private static readonly Dictionary<FactDeclaration, Func<Block, bool>> Instead = new()
    {
        [VehicleFacts.Overhang] = vehicle => vehicle.Find(VehicleFacts.PinOverhang) is not null,
        [VehicleFacts.PinOverhang] = _ => true,
        [VehicleFacts.Mass] = _ => true,
        [AxleFacts.Vehicle.Carries!] = axle => axle.Outer?.Find(VehicleFacts.Mass) is not null,
        [TrailerFacts.CouplingToAxle] = trailer => trailer.AllBlocks(AxleFacts.Trailer.Block).Any(axle => axle.Find(AxleFacts.Trailer.BehindCoupling!) is not null),
    };

    /// <summary>"`axle-rating` of axle rear". None for a part of which only its mass is said: it is there for a trip, and nobody has begun to ask for a verdict.</summary>
    public static IEnumerable<string> Missing(RigStudy rig, Block part)
    {
        if (!part.Facts.Any(line => line.Declaration.Need == Need.ForVerdict && line.Declaration != VehicleFacts.Mass && line.Declaration != TrailerFacts.Mass && line.Declaration != TrailerFacts.Tongue))
        {
            yield break;
        }

        var ratings = RigRatings.Of(rig).Where(rating => rating.IsAskedFor).Select(rating => (rating.Owner, rating.Limit)).ToHashSet();
        foreach (var block in part.WithInner())
        {
            foreach (var fact in block.Declaration.Facts.Where(fact => IsWanted(rig, block, fact, ratings) && block.Find(fact) is null))
            {
                yield return block == part ? $"`{fact.Keyword}`" : $"`{fact.Keyword}` of {block.Declaration.Keyword} {block.Key}";
            }
        }

        if (part.Declaration == VehicleFacts.Block)
        {
            foreach (var axle in VehicleAxles.Where(axle => part.FindBlock(AxleFacts.Vehicle.Block, axle) is null && part.Find(VehicleFacts.Axle) is not null))
            {
                yield return $"`axle {axle}`";
            }
        }
    }

    /// <summary>Ratings as the rig is configured; the rest where nothing else takes its place, and without a trailer nothing that is about one.</summary>
    private static bool IsWanted(RigStudy rig, Block block, FactDeclaration fact, HashSet<(Block, FactDeclaration)> ratings) =>
        ratings.Contains((block, fact))
            ? fact != VehicleFacts.TowingRatingCarrying && fact != VehicleFacts.TongueRatingCarrying
            : fact.Need == Need.ForVerdict && !IsRating(fact) && !(Instead.TryGetValue(fact, out var isThere) && isThere(block)) && (rig.HasTrailer || fact != VehicleFacts.Overhang);

    private static bool IsRating(FactDeclaration fact) => fact.Keyword.Contains("-rating", StringComparison.Ordinal);
}

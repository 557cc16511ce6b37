using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Loads;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A position is told from a point that isn't there.</summary>
public sealed class UnknownPoint : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL316",
        Slug = "unknown-point",
        Severity = Severity.Error,
        Summary = "A position is told from a point that isn't there.",
        Why = "Without its point a position says nothing, and the item counts nowhere.",
        Bad = RigExample.Pair.With(("behind front-axle", "behind front")),
        Good = RigExample.Pair,
        Fix = "Name a point: on a vehicle `front-axle`, `rear-axle`, `ball`, `pin`; on a trailer `coupling`, `body`, `axle` or one of its axles by name.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        foreach (var block in declaration.Block.WithInner())
        {
            if (PointsIn(declaration, block) is not { } points)
            {
                continue;
            }

            foreach (var line in block.Facts.Where(line => line.Place.Declaration == declaration.Own.Syntax))
            {
                foreach (var position in line.Values.Values.OfType<PositionValue>().Where(position => !points.Contains(position.Point)))
                {
                    yield return At(line, position, points);
                }
            }
        }
    }

    /// <summary>The finding for a position whose point none of these is.</summary>
    internal Finding At(Fact line, PositionValue position, IReadOnlyCollection<string> points)
    {
        var place = line.Place with { Span = position.PointSpan };
        var finding = Report(place, $"No point is called `{position.Point}` there. Points are {string.Join(", ", points.Select(point => $"`{point}`"))}.");
        return Spelling.Nearest(position.Point, points) is { } near ? finding with { Fixes = [new Fix($"Write `{near}`", place, near)] } : finding;
    }

    /// <summary>The points of a trailer: the fixed ones and its axles by name.</summary>
    internal static IReadOnlyCollection<string> PointsOf(Block trailer) => [.. TrailerPoints.Names, .. trailer.AllBlocks(AxleFacts.Trailer.Block).Select(axle => axle.Key)];

    /// <summary>Null where positions can't be judged: a load's on a trailer depend on the trailer.</summary>
    private static IReadOnlyCollection<string>? PointsIn(Declaration declaration, Block block) => declaration.Kind switch
    {
        DeclarationKind.Vehicle => VehiclePoints.Names.ToList(),
        DeclarationKind.Trailer => PointsOf(declaration.Block),
        DeclarationKind.Load when block.Key == "vehicle" => VehiclePoints.Names.ToList(),
        _ => null,
    };
}

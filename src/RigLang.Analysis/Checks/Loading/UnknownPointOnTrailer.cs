using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A load's position on a trailer is told from an axle that the rig's trailer doesn't have.</summary>
public sealed class UnknownPointOnTrailer : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new UnknownPoint().Declaration;

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.Parts.Trailer is null)
        {
            yield break;
        }

        var points = UnknownPoint.PointsOf(rig.Trailer);
        foreach (var load in rig.Parts.Loads)
        {
            foreach (var line in LoadLines.Of(load, "trailer", CargoFacts.Load.Item))
            {
                if (line.PositionOf("place") is { } position && !points.Contains(position.Point))
                {
                    yield return Report(
                        rig, LoadLines.Naming(rig, load),
                        $"`{line.Title}` of load {load.Name} is placed from `{position.Point}`, a point that trailer {rig.Parts.Trailer.Name} doesn't have. Its points are {string.Join(", ", points.Select(point => $"`{point}`"))}.")
                        with { Related = [new Related(line.Place, "the item")] };
                }
            }
        }
    }
}

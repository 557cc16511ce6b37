using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>An item lies where the vehicle or trailer is not.</summary>
public sealed class ItemOutOfReach : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL317",
        Slug = "item-out-of-reach",
        Severity = Severity.Warning,
        Summary = "An item lies where the vehicle or trailer is not.",
        Why = "A slip in a distance, or `behind` for `ahead of`, puts a gas bottle ten metres behind the trailer, where it lifts the tongue like nothing real.",
        Bad = RigExample.Pair.With(("1.40 m behind front-axle", "14.0 m behind front-axle")),
        Good = RigExample.Pair,
        Fix = "Check the item's distance, its point, and whether it is behind or ahead of it.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        foreach (var (carrier, places, reach, start) in Sides(rig))
        {
            foreach (var (item, position) in places.Where(place => Limits.FallsBelow(place.Position, reach.Front) || Limits.Exceeds(place.Position, reach.Rear)))
            {
                var load = rig.Parts.Loads.FirstOrDefault(load => load.Block.WithInner().Any(block => block.Facts.Contains(item)));
                var named = load is not null ? LoadLines.Naming(rig, load) : rig.Rig.Find(carrier == "vehicle" ? RigFacts.Vehicle : RigFacts.Trailer);
                var whose = load is not null ? $" of load {load.Name}" : " under `aboard`";
                yield return Report(
                    rig, named,
                    $"`{item.Title}`{whose} comes to lie {Distance(item, Math.Abs(position))} {(position < 0 ? "ahead of" : "behind")} the {start}, where the {carrier} is not. Check its distance and its point.")
                    with { Related = [new Related(item.Place, "the item")] };
            }
        }
    }

    private static IEnumerable<(string Carrier, IEnumerable<(Fact Item, double Position)> Places, (double Front, double Rear) Reach, string Start)> Sides(RigStudy rig)
    {
        if (CargoReach.OfVehicle(rig) is { } vehicle)
        {
            yield return ("vehicle", rig.Compute(Cargo.PlacesOnVehicle, rig).Value, vehicle, "front axle");
        }

        if (rig.HasTrailer && CargoReach.OfTrailer(rig) is { } trailer)
        {
            yield return ("trailer", rig.Compute(Cargo.PlacesOnTrailer, rig).Value, trailer, "coupling");
        }
    }

    /// <summary>In the unit in which the item's own distance is written.</summary>
    private static string Distance(Fact item, double metres) =>
        item.PositionOf("place")!.Written is { } like ? QuantityWriter.WriteLike(metres, like) : QuantityWriter.Write(metres, QuantityKinds.Length, DisplaySystem.Metric);
}

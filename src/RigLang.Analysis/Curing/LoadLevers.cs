using RigLang.Analysis.Checks.Loading;
using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Curing;

/// <summary>Items and tank levels of the loads. People keep their seats.</summary>
internal static class LoadLevers
{
    /// <summary>Of more items than these the heaviest are tried.</summary>
    private const int MostItems = 8;

    /// <summary>Who would have to leave more than these behind wants another load.</summary>
    private const int MostTogether = 4;

    /// <summary>Coarser distances than this are written with one digit more.</summary>
    private const double CoarsestPlace = 0.11;

    /// <summary>How people are usually called in a load (our list); what is called so isn't moved or left behind.</summary>
    private static readonly HashSet<string> People = new(StringComparer.Ordinal)
    {
        "driver", "partner", "passenger", "passengers", "person", "persons", "people", "family", "child", "children", "kid", "kids", "teenager", "teenagers",
        "adult", "adults", "baby", "crew", "occupant", "occupants", "mother", "father", "parents", "son", "daughter", "grandparents", "grandmother", "grandfather",
        "front-seat", "back-seat", "rear-seat", "second-row", "third-row", "mate", "friend", "friends", "guest", "guests", "us",
    };

    public static IEnumerable<Handle> Moves(Study study, Finding finding) =>
        from rig in RigOf(study)
        from side in Sides(rig)
        from item in Items(rig, side.Carrier)
        let place = item.Line.PositionOf("place")!
        let like = place.Written ?? LikeOf(item.Block)
        where side.Places.ContainsKey(item.Line) && double.IsFinite(side.Places[item.Line])
        let start = place.Offset - side.Places[item.Line]
        select new Handle(
            FactRef.Of(item.Block, item.Line, "place"), place.Offset, start + side.Front, start + side.Rear, like.Unit, Digits(like),
            value => new Change(
                $"Move {item.Line.Key} {Length(Math.Abs(value - place.Offset), like)} {(value < place.Offset ? "forward" : "rearward")}",
                item.Line.PlaceOf("place"), Written(value, place.Point, like)));

    public static IEnumerable<Handle> TakenOut(Study study, Finding finding) =>
        from rig in RigOf(study)
        from item in Items(rig, null)
        let mass = item.Line.MeasureOf("mass")!
        // Two bicycles aren't lightened by a bit.
        where !mass.Text.Contains(" x ", StringComparison.Ordinal) && !mass.Text.Contains('+')
        select new Handle(
            FactRef.Of(item.Block, item.Line, "mass"), mass.Value, 0.2 * mass.Value, mass.Value, mass.Unit, mass.Decimals,
            value => new Change(
                $"Take {QuantityWriter.WriteLike(mass.Value - value, mass)} out of {item.Line.Key}", item.Line.PlaceOf("mass"), mass.With(value, mass.HalfWidth).Text));

    public static IEnumerable<Handle> LeftBehind(Study study, Finding finding) =>
        from rig in RigOf(study)
        from item in Items(rig, null)
        orderby item.Mass
        let mass = item.Line.MeasureOf("mass")!
        select new Handle(
            FactRef.Of(item.Block, item.Line, "mass"), mass.Value, 0, mass.Value, mass.Unit, mass.Decimals,
            _ => new Change($"Leave {item.Line.Key} behind ({QuantityWriter.WriteLike(mass.Value, mass)})", item.Line.Place, ""))
        { Only = 0 };

    /// <summary>The heaviest two, three and so on of a rig.</summary>
    public static IEnumerable<Handle> SeveralLeftBehind(Study study, Finding finding)
    {
        var items = RigOf(study).SelectMany(rig => Items(rig, null)).ToList();
        for (var count = 2; count <= Math.Min(MostTogether, items.Count); count++)
        {
            var together = items.Take(count).ToList();
            var first = together[0].Line.MeasureOf("mass")!;
            var names = string.Join(", ", together.SkipLast(1).Select(item => item.Line.Key)) + " and " + together[^1].Line.Key;
            yield return new Handle(
                FactRef.Of(together[0].Block, together[0].Line, "mass"), first.Value, 0, first.Value, first.Unit, first.Decimals,
                _ => new Change(
                    $"Leave {names} behind ({QuantityWriter.WriteLike(together.Sum(item => item.Mass), LikeMass(together[0].Line))})", [.. together.Select(item => new Replacement(item.Line.Place, ""))]))
            {
                Only = 0,
                Beside = [.. together.Skip(1).Select(item => FactRef.Of(item.Block, item.Line, "mass"))],
            };
        }
    }

    public static IEnumerable<Handle> Fills(Study study, Finding finding) =>
        from rig in RigOf(study)
        from load in rig.Loads
        from block in load.AllBlocks(CargoFacts.Load.Block)
        from fill in block.All(CargoFacts.Load.Fill)
        let level = fill.MeasureOf("level")
        where level is not null
        select new Handle(
            FactRef.Of(block, fill, "level"), level.Value, 0, level.Kind == QuantityKinds.Ratio ? 1 : level.Value, level.Unit, level.Decimals,
            value => new Change($"Travel with {fill.Key} at {level.With(value).Text}", fill.PlaceOf("level"), level.With(value).Text));

    /// <summary>The rig that the finding is about, if it is about one.</summary>
    private static IEnumerable<RigStudy> RigOf(Study study) => study is RigStudy rig ? [rig] : [];

    private static IEnumerable<(Block Block, Fact Line, double Mass)> Items(RigStudy rig, string? carrier) =>
        rig.Loads.SelectMany(load => load.AllBlocks(CargoFacts.Load.Block)).Where(block => carrier is null || block.Key == carrier)
            .SelectMany(block => block.All(CargoFacts.Load.Item).Where(line => line.IsComplete && !People.Contains(line.Key)).Select(line => (Block: block, Line: line, Mass: MassOf(line))))
            .Where(item => item.Mass > 0).OrderByDescending(item => item.Mass).Take(MostItems);

    private static Measure LikeMass(Fact item) =>
        item.MeasureOf("mass") is { } mass && mass.Kind == QuantityKinds.Mass ? mass : Measure.Of(QuantityKinds.Mass, 1, QuantityKinds.Mass.Metric, 0);

    private static double MassOf(Fact item) => item.MeasureOf("mass") is not { } mass ? 0
        : mass.Kind == QuantityKinds.Volume ? mass.Value * Fluids.Density(item.WordOf("fluid") ?? "")
        : mass.Value;

    /// <summary>Where things can be stowed: in the vehicle from its foremost item, mostly the driver, to its tail, in the trailer from the drawbar's end to its own.</summary>
    private static IEnumerable<(string Carrier, Dictionary<Fact, double> Places, double Front, double Rear)> Sides(RigStudy rig)
    {
        // The reach is drawn wide, to catch slips; what is proposed stays a metre within it.
        if (CargoReach.OfVehicle(rig) is { } vehicle)
        {
            var places = PlacesOf(rig.Compute(Cargo.PlacesOnVehicle, rig));
            var foremost = places.Values.Where(double.IsFinite).DefaultIfEmpty(0).Min();
            yield return ("vehicle", places, foremost, vehicle.Rear - 1);
        }

        if (rig.HasTrailer && CargoReach.OfTrailer(rig) is { } trailer)
        {
            var body = rig.Trailer.Find(TrailerFacts.CouplingToBody)?.MeasureOf(Model.Declaring.Signature.ValueRole)?.Value ?? 0.5;
            yield return ("trailer", PlacesOf(rig.Compute(Cargo.PlacesOnTrailer, rig)), body, trailer.Rear - 1);
        }
    }

    private static Dictionary<Fact, double> PlacesOf(Node<IReadOnlyList<(Fact Item, double Position)>> places)
    {
        var found = new Dictionary<Fact, double>(ReferenceEqualityComparer.Instance as IEqualityComparer<Fact>);
        foreach (var (item, position) in places is { Applies: true, Missing: null, Refusal: null } ? places.Value : [])
        {
            found[item] = position;
        }

        return found;
    }

    private static Measure LikeOf(Block block) =>
        block.All(CargoFacts.Load.Item).Select(item => item.PositionOf("place")?.Written).OfType<Measure>().FirstOrDefault() ?? Measure.Of(QuantityKinds.Length, 1, QuantityKinds.Length.Metric, 2);

    private static int Digits(Measure like) => like.Unit.ToSi(Math.Pow(10, -like.Decimals)) > CoarsestPlace ? like.Decimals + 1 : like.Decimals;

    private static string Length(double metres, Measure like) => QuantityWriter.Write(metres, like.Unit, Digits(like));

    private static string Written(double offset, string point, Measure like) =>
        Math.Abs(offset) < like.Unit.ToSi(0.4 * Math.Pow(10, -Digits(like))) ? point : $"{Length(Math.Abs(offset), like)} {(offset < 0 ? "ahead of" : "behind")} {point}";
}

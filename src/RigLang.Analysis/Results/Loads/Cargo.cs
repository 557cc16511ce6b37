using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Loads;

/// <summary>
/// What is aboard, against what was aboard when the vehicle or trailer was weighed. Weighed contents are taken off first, then the loads are put on, so
/// nobody is counted twice. A tank that no load names stays as it was.
/// </summary>
internal static class Cargo
{
    /// <summary>Changes against the weighed state of the vehicle: masses (kg, negative for what is taken off) at metres behind the front axle.</summary>
    public static Computation<RigStudy, IReadOnlyList<PointMass>> OnVehicle { get; } = new(
        "cargo on vehicle", (read, rig) => Changes(read, new Carrier(rig, rig.Vehicle, "vehicle", CargoFacts.AboardVehicle, VehicleFacts.Tank, VehicleFacts.Aboard, VehiclePoints.Of)));

    /// <summary>The same for the trailer, at metres behind the ball.</summary>
    public static Computation<RigStudy, IReadOnlyList<PointMass>> OnTrailer { get; } = new(
        "cargo on trailer", (read, rig) => Changes(read, new Carrier(rig, rig.Trailer, "trailer", CargoFacts.AboardTrailer, TrailerFacts.Tank, TrailerFacts.Aboard, TrailerPoints.Of)));

    /// <summary>Where the items of the loads and under aboard lie, metres behind the front axle; NaN where a point's place isn't known.</summary>
    public static Computation<RigStudy, IReadOnlyList<(Fact Item, double Position)>> PlacesOnVehicle { get; } = new(
        "places on vehicle", (read, rig) => Places(read, new Carrier(rig, rig.Vehicle, "vehicle", CargoFacts.AboardVehicle, VehicleFacts.Tank, VehicleFacts.Aboard, VehiclePoints.Of)));

    /// <summary>The same for the trailer, metres behind the ball.</summary>
    public static Computation<RigStudy, IReadOnlyList<(Fact Item, double Position)>> PlacesOnTrailer { get; } = new(
        "places on trailer", (read, rig) => Places(read, new Carrier(rig, rig.Trailer, "trailer", CargoFacts.AboardTrailer, TrailerFacts.Tank, TrailerFacts.Aboard, TrailerPoints.Of)));

    /// <summary>What the loads put on the vehicle, kg: occupants and cargo as a placard counts them, fuel left out.</summary>
    public static Computation<RigStudy, double> OccupantsAndCargo { get; } = new(
        "occupants and cargo", (read, rig) => LoadBlocks(rig, "vehicle").SelectMany(block => Items(rig, read, block)).Sum(MassOf));

    /// <summary>What the loads put on the roof, kg.</summary>
    public static Computation<RigStudy, double> OnRoof { get; } = new(
        "on the roof", (read, rig) => LoadBlocks(rig, "vehicle").SelectMany(block => Items(rig, read, block)).Where(item => item.Values.ContainsKey("roof")).Sum(MassOf));

    /// <summary>Of that, what has no height of its own written, kg.</summary>
    public static Computation<RigStudy, double> OnRoofUnmeasured { get; } = new(
        "on the roof, height not said",
        (read, rig) => LoadBlocks(rig, "vehicle").SelectMany(block => Items(rig, read, block)).Where(item => item.Values.ContainsKey("roof") && item.MeasureOf("high") is null).Sum(MassOf));

    /// <summary>The blocks of the loads with items of which nobody says how high they lie, those on the roof left out.</summary>
    public static IEnumerable<Block> WithoutHeight(RigStudy rig, string carrier) =>
        LoadBlocks(rig, carrier).Where(block => block.All(CargoFacts.Load.Item).Any(item => item.IsComplete && item.MeasureOf("high") is null && !item.Values.ContainsKey("roof")));

    /// <summary>What the loads and full tanks put on the trailer, kg, as a placard counts cargo.</summary>
    public static Computation<RigStudy, double> TrailerCargo { get; } = new(
        "trailer cargo", (read, rig) => read.Get(OnTrailer, rig).Sum(item => item.Mass));

    private static List<PointMass> Changes(Reader read, Carrier carrier)
    {
        var changes = new List<PointMass>();
        var aboard = carrier.Block.FindBlock(carrier.Aboard.Block);
        if (aboard is null && carrier.Block.Find(carrier.AboardFact) is null && !carrier.Block.Facts.IsEmpty)
        {
            read.StandIn(carrier.Block, carrier.AboardFact);
        }

        var loads = LoadBlocks(carrier.Rig, carrier.Name).ToList();
        if (!carrier.Rig.Loads.Any())
        {
            return changes;
        }

        if (aboard is not null)
        {
            changes.AddRange(read.Lines(aboard, carrier.Aboard.Item).Select(item => Point(read, carrier, item, -1)));
        }

        foreach (var load in loads)
        {
            changes.AddRange(Items(carrier.Rig, read, load).Select(item => Point(read, carrier, item, 1)));
            changes.AddRange(read.Lines(load, CargoFacts.Load.Fill).Where(fill => !carrier.Rig.Parts.Absent.Contains(fill.Title)).Select(fill => TankChange(read, carrier, aboard, fill)));
        }

        return changes;
    }

    private static List<(Fact, double)> Places(Reader read, Carrier carrier)
    {
        var aboard = carrier.Block.FindBlock(carrier.Aboard.Block);
        return
        [
            .. (aboard is null ? [] : read.Lines(aboard, carrier.Aboard.Item)).Concat(LoadBlocks(carrier.Rig, carrier.Name).SelectMany(block => read.Lines(block, CargoFacts.Load.Item)))
                .Select(item => (item, carrier.PointOf(read, carrier.Rig, item.PositionOf("place")!))),
        ];
    }

    private static IEnumerable<Block> LoadBlocks(RigStudy rig, string carrier) => rig.Loads.SelectMany(load => load.AllBlocks(CargoFacts.Load.Block)).Where(block => block.Key == carrier);

    private static IEnumerable<Fact> Items(RigStudy rig, Reader read, Block load) => read.Lines(load, CargoFacts.Load.Item).Where(item => !rig.Parts.Absent.Contains(item.Title));

    private static PointMass Point(Reader read, Carrier carrier, Fact item, int sign) =>
        new(sign * MassOf(item), carrier.PointOf(read, carrier.Rig, item.PositionOf("place")!), item.MeasureOf("high")?.Value ?? double.NaN, LeftOf(item));

    private static double MassOf(Fact item)
    {
        var amount = item.MeasureOf("mass")!;
        return amount.Kind == QuantityKinds.Volume ? amount.Value * Fluids.Density(item.WordOf("fluid") ?? "") : amount.Value;
    }

    private static double LeftOf(Fact item) => item.MeasureOf("left")?.Value ?? -(item.MeasureOf("right")?.Value ?? 0);

    /// <summary>The tank's mass now, less what it held when weighed.</summary>
    private static PointMass TankChange(Reader read, Carrier carrier, Block? aboard, Fact fill)
    {
        var tank = read.Lines(carrier.Block, carrier.Tank).FirstOrDefault(tank => tank.Key == fill.Key);
        if (tank is null)
        {
            // A level without its tank is reported by a check of its own; it weighs nothing here.
            read.Need(carrier.Block, carrier.Tank);
            return new PointMass(double.NaN, double.NaN);
        }

        var before = aboard is null ? null : read.Lines(aboard, carrier.Aboard.Fill).FirstOrDefault(line => line.Key == fill.Key);
        var volume = tank.MeasureOf("volume")!.Value;
        var density = Fluids.Density(tank.WordOf("fluid")!);
        var mass = density * (Level(fill, volume) - (before is null ? 0 : Level(before, volume)));
        return new PointMass(mass, carrier.PointOf(read, carrier.Rig, tank.PositionOf("place")!), tank.MeasureOf("high")?.Value ?? double.NaN);
    }

    /// <summary>Litres and the like in m³, or the share of the whole.</summary>
    internal static double Level(Fact fill, double volume) => fill.MeasureOf("level") switch
    {
        null => double.NaN,
        var level when level.Kind == QuantityKinds.Volume => level.Value,
        var level => level.Value * volume,
    };

    private sealed record Carrier(
        RigStudy Rig, Block Block, string Name, CargoFacts Aboard, Model.Declaring.FactDeclaration Tank, Model.Declaring.FactDeclaration AboardFact, Func<Reader, RigStudy, PositionValue, double> PointOf);
}

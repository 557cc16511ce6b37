using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Road;

/// <summary>What holds the rig back on a level road at its own speed, in calm air of 15 °C at sea level, and what that costs.</summary>
public static class RoadResults
{
    private const string Force = "rolling, air and grade (textbook road load)";
    private const string Energy = "work at the wheels over the drive's efficiency, auxiliary power added";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> CombinationDrag { get; } = Set.Add(
        "combination-drag", QuantityKinds.Area, "Drag area of the whole", "vehicle, roof and trailer together",
        "drag-area of the rig; or drag-area of the vehicle (or 2 × road-load-square ÷ 1.17 kg/m³), × 1.2 with anything on the roof, + what the trailer adds; or 0.55 (box), 0.35 (rounded) × the trailer's front", Force,
        (read, rig) => read.Get(RoadLoads.Drag, rig));

    public static ResultDeclaration<RigStudy> RollingCoefficient { get; } = Set.Add(
        "rolling-coefficient", QuantityKinds.Number, "Rolling coefficient", "of vehicle and trailer by their loads, at the rig's speed",
        "rolling; or 0.005 + (0.01 + 0.0095 (v ÷ 100 km/h)²) ÷ pressure in bar; gravel adds 0.01, grass 0.05", "engineeringtoolbox.com, rolling friction and rolling resistance, equation 3",
        (read, rig) => read.Get(RoadLoads.Rolling, rig).At(Speed(read, rig)));

    public static ResultDeclaration<RigStudy> RoadLoad { get; } = Set.Add(
        "road-load", QuantityKinds.Force, "Held back by", "on a level road at the rig's speed, calm",
        "mass × g × rolling-coefficient + ½ × air density × combination-drag × speed²", Force,
        (read, rig) => read.Get(RoadLoads.Whole, rig).Force(Speed(read, rig), Drives.StandardAir.Density));

    public static ResultDeclaration<RigStudy> WheelPower { get; } = Set.Add(
        "wheel-power", QuantityKinds.Power, "Power at the wheels", "to hold the rig's speed on a level road, calm",
        "road-load × speed", Force,
        (read, rig) => read.Get(RoadLoad, rig) * Speed(read, rig));

    public static ResultDeclaration<RigStudy> LevelEnergy { get; } = Set.Add(
        "level-energy", QuantityKinds.EnergyPerDistance, "Battery energy, level road", "at the rig's speed, calm",
        "road-load ÷ drive-efficiency + auxiliary ÷ speed", Energy,
        (read, rig) => Drives.BatteryIn(read, rig, Drives.StandardAir.Temperature).Over(read.Get(RoadLoads.Whole, rig), Level(read, rig)).PerDistance);

    public static ResultDeclaration<RigStudy> LevelFuel { get; } = Set.Add(
        "level-fuel", QuantityKinds.FuelPerDistance, "Fuel, level road", "at the rig's speed, calm",
        "fuel for road-load × speed at the crank, by the engine's efficiency there", "typical engine maps, value from memory, scaled by consumption where that is written",
        (read, rig) => read.Get(Drives.Combustion, rig) is { } drive
            ? Drives.VolumeOf(read, rig, drive.Over(read.Get(RoadLoads.Whole, rig), Level(read, rig))) / Level(read, rig).Length
            : double.NaN);

    public static ResultDeclaration<RigStudy> LevelRange { get; } = Set.Add(
        "level-range", QuantityKinds.Distance, "Range, level road", "from full to empty at the rig's speed, calm; hills, wind and cold take from it, a reserve too",
        "usable-energy ÷ level-energy, or tank ÷ level-fuel", Energy,
        (read, rig) => Drives.Battery(rig) is not null
            ? Drives.UsableEnergy(read, rig) / read.Get(LevelEnergy, rig)
            : Drives.Engine(rig) is not null ? read.Get(Drives.TankVolume, rig) / read.Get(LevelFuel, rig) : Drives.UsableEnergy(read, rig));

    public static ResultDeclaration<RigStudy> FullPowerRange { get; } = Set.Add(
        "full-power-range", QuantityKinds.Distance, "Range at full power", "what the battery would last while the motors give their peak at the rig's speed, as when merging; it recovers when the speed steadies",
        "usable-energy × speed ÷ (motor-power ÷ drive-efficiency + auxiliary)", "definition",
        (read, rig) => Drives.Battery(rig) is null
            ? read.NotApplicable()
            : Drives.BatteryIn(read, rig, Drives.StandardAir.Temperature).RangeAtPower(Drives.UsableEnergy(read, rig), read.Get(Drives.WheelPower, rig), Speed(read, rig)));

    private static RouteSegment Level(Reader read, RigStudy rig) => new(1000, 0, Speed(read, rig), Drives.StandardAir.Density);

    private static double Speed(Reader read, RigStudy rig) => read.Quantity(rig.Rig, RigFacts.Speed);
}

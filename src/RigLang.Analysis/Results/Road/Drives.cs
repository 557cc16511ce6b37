using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Road;

/// <summary>The vehicle's drive, battery or engine, as the energy models read it.</summary>
internal static class Drives
{
    /// <summary>The usual day, for results at one speed: sea level, 15 °C, calm.</summary>
    public static AirState StandardAir => Atmosphere.AtGeopotential(0);

    public static Block? Battery(RigStudy rig) => rig.Vehicle.FindBlock(ElectricFacts.Block);

    public static Block? Engine(RigStudy rig) => rig.Vehicle.FindBlock(CombustionFacts.Block);

    /// <summary>The battery drive in air of a temperature (K); misses where the vehicle has none.</summary>
    public static BatteryDrive BatteryIn(Reader read, RigStudy rig, double temperature)
    {
        if (Battery(rig) is not { } block)
        {
            read.NotApplicable();
            return default;
        }

        if (read.QuantityIfKnown(block, ElectricFacts.Auxiliary) is not { } auxiliary)
        {
            read.StandIn(block, ElectricFacts.Auxiliary);
            auxiliary = BatteryDefaults.Auxiliary(temperature);
        }

        return new BatteryDrive(
            read.Quantity(block, ElectricFacts.DriveEfficiency), read.Quantity(block, ElectricFacts.Regeneration), read.Quantity(block, ElectricFacts.RegenerationPower), auxiliary);
    }

    /// <summary>Between full and empty on the display, J.</summary>
    public static double UsableEnergy(Reader read, RigStudy rig) => Battery(rig) is { } block ? read.Quantity(block, ElectricFacts.UsableEnergy) : read.NotApplicable();

    /// <summary>The engine drive, scaled to what is stated of its consumption or best point.</summary>
    public static Computation<RigStudy, CombustionDrive?> Combustion { get; } = new("engine drive", (read, rig) =>
    {
        if (Engine(rig) is not { } block)
        {
            read.NotApplicable();
            return null;
        }

        var fuel = FuelOf(read, rig);
        var drive = new CombustionDrive(
            read.Word(block, CombustionFacts.Fuel) == "diesel" ? EngineMap.Diesel : EngineMap.Petrol,
            read.Quantity(block, CombustionFacts.EnginePower), read.Quantity(block, CombustionFacts.DrivelineEfficiency));
        if (read.QuantityIfKnown(block, CombustionFacts.Consumption) is { } consumption)
        {
            var pace = new RouteSegment(1, 0, read.Quantity(block, CombustionFacts.ConsumptionSpeed), StandardAir.Density);
            return drive.ScaleTo(read.Get(RoadLoads.Solo, rig), pace, consumption * fuel.VolumeHeatingValue);
        }

        if (read.QuantityIfKnown(block, CombustionFacts.EngineEfficiency) is { } best)
        {
            return drive.WithBestEfficiency(best);
        }

        read.StandIn(block, CombustionFacts.EngineEfficiency);
        return drive;
    });

    public static Fuel FuelOf(Reader read, RigStudy rig) => (Engine(rig) is { } block ? read.Word(block, CombustionFacts.Fuel) : null) switch
    {
        "diesel" => Fuel.Diesel,
        "lpg" => Fuel.LiquefiedGas,
        "e85" => Fuel.E85,
        "cng" => Fuel.NaturalGas,
        _ => Fuel.Petrol,
    };

    /// <summary>Volume of the tank that holds what the engine burns, m³.</summary>
    public static Computation<RigStudy, double> TankVolume { get; } = new("fuel tank", (read, rig) =>
    {
        var fuel = Engine(rig) is { } block ? read.Word(block, CombustionFacts.Fuel) : null;
        if (read.Lines(rig.Vehicle, VehicleFacts.Tank).FirstOrDefault(tank => tank.WordOf("fluid") == fuel) is { } found)
        {
            return found.MeasureOf("volume")!.Value;
        }

        read.Need(rig.Vehicle, VehicleFacts.Tank);
        return double.NaN;
    });

    /// <summary>Power at the wheels that lasts, W: the drive's peak, or less where the lasting power is written; null where nothing is known.</summary>
    public static double? LastingPower(Reader read, RigStudy rig)
    {
        if (Battery(rig) is { } battery)
        {
            double?[] powers = [read.QuantityIfKnown(battery, ElectricFacts.MotorPower), read.QuantityIfKnown(battery, ElectricFacts.MotorPowerLasting)];
            return powers.Min() is { } power ? power * BatteryGearbox : null;
        }

        return Engine(rig) is { } engine && read.QuantityIfKnown(engine, CombustionFacts.EnginePower) is { } rated
            ? rated * read.Quantity(engine, CombustionFacts.DrivelineEfficiency)
            : null;
    }

    // Motor to wheel: a gearbox of 0.98 (published motor maps name it so).
    private const double BatteryGearbox = 0.98;
}

using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Road;

/// <summary>The vehicle's drive, battery or engine, as the energy models read it.</summary>
internal static class Drives
{
    // Motor to wheel: published motor maps name a gearbox of 0.98.
    private const double BatteryGearbox = 0.98;

    // K: where cold and heat begin to take from the range, where they begin to slow charging, and where the figures end.
    private const double MildFrom = 288.15, MildTo = 298.15, ColdBelow = 283.15, Coldest = 223.15, Hottest = 333.15;

    /// <summary>The usual day, for results at one speed: sea level, 15 °C, calm.</summary>
    public static AirState StandardAir { get; } = Atmosphere.AtGeopotential(0);

    public static Block? Battery(RigStudy rig) => rig.Vehicle.FindBlock(ElectricFacts.Block);

    /// <summary>Null where the vehicle has a battery drive: version 1 of the language knows no hybrids.</summary>
    public static Block? Engine(RigStudy rig) => Battery(rig) is null ? rig.Vehicle.FindBlock(CombustionFacts.Block) : null;

    /// <summary>The battery drive in air of a temperature (K). Doesn't apply to engines; where the vehicle has neither drive it is missed.</summary>
    public static BatteryDrive BatteryIn(Reader read, RigStudy rig, double temperature)
    {
        if (Battery(rig) is not { } block)
        {
            NoBattery(read, rig);
            return default;
        }

        if (read.QuantityIfKnown(block, ElectricFacts.Auxiliary) is not { } auxiliary)
        {
            read.StandIn(block, ElectricFacts.Auxiliary);
            auxiliary = BatteryDefaults.Auxiliary(temperature);
        }

        var left = TemperatureShare(read, block, temperature);
        return new BatteryDrive(
            read.Quantity(block, ElectricFacts.DriveEfficiency) * left,
            read.Quantity(block, ElectricFacts.Regeneration) * left,
            // Neither the limit nor the motors' power to estimate it from: no limit is known, the share that comes back still is.
            read.QuantityIfKnown(block, ElectricFacts.RegenerationPower) ?? double.PositiveInfinity,
            auxiliary);
    }

    /// <summary>What of a power that a battery takes when warm it takes in air of a temperature (K); all of it, marked, where no line says and the air is cold.</summary>
    public static double ColdCharging(Reader read, Block battery, double temperature)
    {
        if (!(temperature < ColdBelow))
        {
            return 1;
        }

        if (read.QuantityIfKnown(battery, ElectricFacts.ColdCharging) is { } share)
        {
            return BatteryDefaults.ColdCharging(temperature, Math.Clamp(share, 0, 1));
        }

        read.StandIn(battery, ElectricFacts.ColdCharging);
        return 1;
    }

    /// <summary>Between full and empty on the display, J.</summary>
    public static double UsableEnergy(Reader read, RigStudy rig) => Battery(rig) is { } block ? read.Quantity(block, ElectricFacts.UsableEnergy) : NoBattery(read, rig);

    /// <summary>The engine drive, scaled to what is stated of its consumption or best point; a typical one for its fuel, marked, where neither is.</summary>
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
        if (!double.IsNaN(fuel.VolumeHeatingValue) && read.QuantityIfKnown(block, CombustionFacts.Consumption) is { } consumption)
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

    /// <summary>Volume of a fuel, m³. A gas that is sold by mass has none, and that is said.</summary>
    public static double VolumeOf(Reader read, RigStudy rig, FuelUse use)
    {
        var fuel = FuelOf(read, rig);
        return double.IsNaN(fuel.VolumeHeatingValue) ? read.Refuse("natural gas is sold by mass and has no litres; `fuel-mass` tells its kilograms") : use.Volume(fuel);
    }

    /// <summary>What the engine burns. Gas that is sold by mass has no litres: results in litres aren't computed for it.</summary>
    public static Fuel FuelOf(Reader read, RigStudy rig) => (Engine(rig) is { } block ? read.Word(block, CombustionFacts.Fuel) : null) switch
    {
        "diesel" => Fuel.Diesel,
        "lpg" => Fuel.LiquefiedGas,
        "e85" => Fuel.E85,
        "cng" => Fuel.NaturalGas,
        _ => Fuel.Petrol,
    };

    /// <summary>Volume of the tanks that hold what the engine burns, m³.</summary>
    public static Computation<RigStudy, double> TankVolume { get; } = new("fuel tank", (read, rig) =>
    {
        var fuel = Engine(rig) is { } block ? read.Word(block, CombustionFacts.Fuel) : null;
        var tanks = read.Lines(rig.Vehicle, VehicleFacts.Tank).Where(tank => tank.WordOf("fluid") == fuel).ToList();
        if (tanks.Count == 0)
        {
            read.Need(rig.Vehicle, VehicleFacts.Tank);
        }

        return tanks.Sum(tank => tank.MeasureOf("volume")!.Value);
    });

    /// <summary>Most that the drive gives at the wheels in air of standard density, W; missing where its power isn't written.</summary>
    public static Computation<RigStudy, double> WheelPower { get; } = new("power at the wheels", (read, rig) =>
        Battery(rig) is { } battery ? read.Quantity(battery, ElectricFacts.MotorPower) * BatteryGearbox
        : Engine(rig) is { } engine ? read.Quantity(engine, CombustionFacts.EnginePower) * read.Quantity(engine, CombustionFacts.DrivelineEfficiency)
        : NoBattery(read, rig));

    /// <summary>Marks a result that rests on the motors' peak being held, which nobody says.</summary>
    public static void MarkPeak(Reader read, RigStudy rig)
    {
        if (Battery(rig) is { } battery && !read.IsWritten(battery, ElectricFacts.MotorPowerLasting))
        {
            read.StandIn(battery, ElectricFacts.MotorPowerLasting);
        }
    }

    /// <summary>What of that power is left in air of a density (kg/m³): thin air takes from engines.</summary>
    public static Func<double, double> PowerLeft(Reader read, RigStudy rig)
    {
        if (Engine(rig) is not { } engine || read.WordIfKnown(engine, CombustionFacts.Aspiration) is not { } word)
        {
            return _ => 1;
        }

        var aspiration = word == "natural" ? Aspiration.Natural : Aspiration.Turbo;
        return density => AltitudeLoss.Share(density, aspiration);
    }

    /// <summary>What heat and cold leave of the drive's range; nothing is asked while the air is mild.</summary>
    private static double TemperatureShare(Reader read, Block battery, double temperature) =>
        temperature is >= MildFrom and <= MildTo || double.IsNaN(temperature)
            ? 1
            : BatteryDefaults.TemperatureShare(Math.Clamp(temperature, Coldest, Hottest), Math.Clamp(read.Quantity(battery, ElectricFacts.ColdLoss), 0, 0.5));

    private static double NoBattery(Reader read, RigStudy rig)
    {
        if (Engine(rig) is not null)
        {
            return read.NotApplicable();
        }

        read.Need(rig.Vehicle, VehicleFacts.Electric);
        return double.NaN;
    }
}

using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>A vehicle's battery drive.</summary>
public static class ElectricFacts
{
    public static BlockDeclaration Block { get; } = VehicleFacts.Block.Block(VehicleFacts.Electric);

    public static FactDeclaration UsableEnergy { get; } = Block.Fact(
        "usable-energy", Q.Energy, "91 kWh ± 2 %", "between full and empty on the display", Need.ForResults, plausible: (1.8e7, 1.1e9), positive: true,
        aliases: ["battery", "battery-capacity", "capacity"]);

    public static FactDeclaration MotorPower { get; } = Block.Fact(
        "motor-power", Q.Power, "180 kW", "peak, all motors together", Need.ForResults, plausible: (20_000, 1_500_000), positive: true);

    public static FactDeclaration MotorPowerLasting { get; } = Block.Fact(
        "motor-power-lasting", Q.Power, "95 kW", "held for half an hour", Need.ForResults, otherwise: "none: the peak is never taken in its place",
        plausible: (10_000, 800_000), positive: true);

    public static FactDeclaration MotorTorque { get; } = Block.Fact(
        "motor-torque", Q.Torque, "560 N·m", "all motors together, at the motors", Need.ForResults, plausible: (50, 5000), positive: true);

    public static FactDeclaration MotorSpeed { get; } = Block.Fact(
        "motor-speed", Q.Rotation, "16_000 rpm", "highest", Need.ForResults, plausible: (300, 3500), positive: true);

    public static FactDeclaration Reduction { get; } = Block.Fact(
        "reduction", Q.Number, "10.2", "motor turns for one turn of the wheel", Need.ForResults, plausible: (3, 20), positive: true);

    public static FactDeclaration DriveEfficiency { get; } = Block.Fact(
        "drive-efficiency", Q.Ratio, "88 % ± 2 %", "battery to wheel", Need.ForResults,
        Estimate.Constant(0.88, "88 %", "middle of published motor maps with a gearbox, 85 to 92 %", 0.04), plausible: (0.5, 0.98), positive: true);

    public static FactDeclaration Regeneration { get; } = Block.Fact(
        "regeneration", Q.Ratio, "60 %", "wheel to battery", Need.ForResults,
        Estimate.Constant(0.60, "60 %", "common practice, value from memory", 0.15), plausible: (0, 0.9), aliases: ["recuperation"]);

    public static FactDeclaration RegenerationPower { get; } = Block.Fact(
        "regeneration-power", Q.Power, "70 kW", "most that the battery takes", Need.ForResults, DriveEstimates.RegenerationPower, plausible: (1000, 600_000), positive: true);

    public static FactDeclaration Auxiliary { get; } = Block.Fact(
        "auxiliary", Q.Power, "0.9 kW", "heating, cooling and electronics", Need.ForResults, otherwise: "0.25 kW in mild air, more by the air's temperature (our estimate, after five vehicles that the AAA measured in 2019)", plausible: (0, 10_000));

    public static FactDeclaration ColdLoss { get; } = Block.Fact(
        "cold-loss", Q.Ratio, "12 %", "what −7 °C takes from the range, the cabin apart; 35 °C takes a third of it, 15 to 25 °C nothing", Need.ForResults,
        Estimate.Constant(0.12, "12 %", "five vehicles that the AAA measured in 2019", 0.5), plausible: (0, 0.5));

    public static FactDeclaration ColdCharging { get; } = Block.Fact(
        "cold-charging", Q.Ratio, "50 %", "share of its charging power that the battery takes at 0 °C without being warmed; all from 10 °C up", Need.ForResults,
        otherwise: "as when warm, marked below 10 °C", plausible: (0.05, 1), positive: true);

    public static FactDeclaration ChargeEfficiency { get; } = Block.Fact(
        "charge-efficiency", Q.Ratio, "92 %", "post to battery", Need.ForResults,
        otherwise: "86 % ac (published typical value), 92 % dc (value from memory)", plausible: (0.6, 1), positive: true);

    public static FactDeclaration ChargePoint { get; } = Block.Fact(
        "charge-point",
        Signature.Of(new Slot("charge", new QuantityForm([Q.Ratio])), new Slot("power", new QuantityForm([Q.Power]))),
        "60 % 92 kW", "what the battery takes at that charge; straight lines between", Need.ForResults, key: ["charge"]);

    public static FactDeclaration BatteryVoltage { get; } = Block.Fact(
        "battery-voltage", Q.Voltage, "355 V", "half charged, for posts that limit their current", Need.ForResults,
        Estimate.Constant(370, "370 V", "our choice, for the 400 V class", 0.1), plausible: (40, 1200), positive: true);

    public static FactDeclaration AcPower { get; } = Block.Fact(
        "ac-power", Q.Power, "11 kW", "the on-board charger's", Need.ForResults, plausible: (1000, 45_000), positive: true);
}

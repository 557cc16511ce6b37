using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>A vehicle's engine drive.</summary>
public static class CombustionFacts
{
    public static BlockDeclaration Block { get; } = VehicleFacts.Block.Block(VehicleFacts.Combustion);

    public static FactDeclaration Fuel { get; } = Block.Fact(
        "fuel", Signature.Choice("petrol", "diesel", "lpg", "e85", "cng"), "diesel", "what it burns", Need.ForResults);

    public static FactDeclaration Aspiration { get; } = Block.Fact(
        "aspiration", Signature.Choice("natural", "turbo"), "turbo", "for its power at altitude", Need.ForResults);

    public static FactDeclaration EnginePower { get; } = Block.Fact(
        "engine-power", Q.Power, "310 kW", "rated, at the crank", Need.ForResults, plausible: (20_000, 1_000_000), positive: true);

    public static FactDeclaration TorquePoint { get; } = Block.Fact(
        "torque-point",
        Signature.Of(new Slot("speed", new QuantityForm([Q.Rotation])), new Slot("torque", new QuantityForm([Q.Torque]))),
        "1600 rpm 850 lbf·ft", "a point of the full-load curve", Need.ForResults, key: ["speed"]);

    public static FactDeclaration EngineSpeed { get; } = Block.Fact(
        "engine-speed", Q.Rotation, "3400 rpm", "highest", Need.ForResults, otherwise: "the last torque-point", plausible: (100, 1200), positive: true);

    public static FactDeclaration Transmission { get; } = Block.Fact(
        "transmission", Signature.Choice("manual", "automatic"), "automatic", "gearbox", Need.ForResults);

    public static FactDeclaration Gear { get; } = Block.Fact(
        "gear",
        Signature.Of(new Slot("number", new QuantityForm([Q.Count])), new Slot("ratio", new QuantityForm([Q.Number]))),
        "1 4.50", "ratio of a gear", Need.ForResults, key: ["number"]);

    public static FactDeclaration FinalDrive { get; } = Block.Fact(
        "final-drive", Q.Number, "3.54", "ratio of the driven axle", Need.ForResults, plausible: (1.5, 8), positive: true, aliases: ["axle-ratio", "diff-ratio"]);

    public static FactDeclaration DrivelineEfficiency { get; } = Block.Fact(
        "driveline-efficiency", Q.Ratio, "90 %", "crank to wheel", Need.ForResults, DriveEstimates.DrivelineEfficiency, plausible: (0.6, 0.99), positive: true);

    public static FactDeclaration EngineEfficiency { get; } = Block.Fact(
        "engine-efficiency", Q.Ratio, "40 %", "best point", Need.ForResults, otherwise: "a typical curve for the fuel (value from memory)", plausible: (0.15, 0.5), positive: true);

    public static FactDeclaration RetardingPower { get; } = Block.Fact(
        "retarding-power", Q.Power, "60 kW", "engine or exhaust brake, at the wheels", Need.ForResults, DriveEstimates.RetardingPower, plausible: (5000, 500_000), positive: true);

    public static FactDeclaration Consumption { get; } = Block.Fact(
        "consumption", Q.FuelPerDistance, "7.1 L/100km", "at `consumption-speed`, solo; scales the engine's curve", plausible: (2e-8, 5e-7), positive: true);

    public static FactDeclaration ConsumptionSpeed { get; } = Block.Fact(
        "consumption-speed", Q.Speed, "90 km/h", "the steady speed of `consumption`", Need.ForResults, plausible: (8, 60), positive: true);
}

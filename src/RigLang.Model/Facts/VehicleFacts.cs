using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of a tow vehicle.</summary>
public static class VehicleFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Vehicle, "a tow vehicle with two axles");

    public static FactDeclaration Wheelbase { get; } = Block.Fact(
        "wheelbase", Q.Length, "2.94 m", "front to rear axle centre", Need.ForVerdict, plausible: (1.5, 8), positive: true);

    public static FactDeclaration Overhang { get; } = Block.Fact(
        "overhang", Q.Length, "1.09 m", "rear axle to ball centre, for the vehicle's own ball; else `pin-overhang`", Need.ForVerdict,
        plausible: (0.2, 4), positive: true, aliases: ["rear-overhang", "hitch-overhang"]);

    public static FactDeclaration BallHeight { get; } = Block.Fact(
        "ball-height", Q.Length, "0.41 m", "road to ball centre, the vehicle's own ball, as under aboard", Need.ForResults, plausible: (0.2, 1.2), positive: true);

    public static FactDeclaration PinOverhang { get; } = Block.Fact(
        "pin-overhang", Q.Length, "52.5 in", "rear axle to the receiver's pin hole; else `overhang`", Need.ForVerdict, plausible: (0.2, 4), positive: true);

    public static FactDeclaration ReceiverHeight { get; } = Block.Fact(
        "receiver-height", Q.Length, "28 in", "road to the inside top of the receiver tube, as under aboard", Need.ForResults, plausible: (0.2, 1.5), positive: true);

    public static FactDeclaration ReceiverSize { get; } = Block.Fact(
        "receiver-size", Q.Size, "2.5 in", "inside width of the receiver tube", Need.ForResults, plausible: (0.02, 0.12), positive: true);

    public static FactDeclaration Mount { get; } = Block.Fact(
        "mount",
        Signature.Of(new Slot("name", new NameForm()), new Slot("place", new PositionForm(), "at")),
        "rear at 0.12 m ahead of ball",
        "a line across the chassis where the receiver is bolted on; exactly two",
        Need.ForResults, key: ["name"]);

    public static FactDeclaration MountRating { get; } = Block.Fact(
        "mount-rating", Q.Force, "9 kN", "limit at either mount, upward and downward", plausible: (500, 200_000), positive: true);

    public static FactDeclaration Mass { get; } = Block.Fact(
        "mass", Q.Mass, "1235 kg ± 15 kg", "whole vehicle, as under aboard; with `front-share` in place of what the axles carry", Need.ForVerdict,
        otherwise: "the sum of what the axles carry", plausible: (400, 12_000), positive: true);

    public static FactDeclaration FrontShare { get; } = Block.Fact(
        "front-share", Q.Ratio, "59.5 % ± 1 %", "part of `mass` on the front axle", Need.ForResults, plausible: (0.25, 0.8), positive: true);

    public static FactDeclaration KerbMass { get; } = Block.Fact(
        "kerb-mass", Q.Mass, "1170 kg", "mass in running order on the papers", Need.ForResults, plausible: (400, 8000), positive: true,
        aliases: ["kerb", "curb", "curb-weight", "kerb-weight", "curb-mass", "unladen", "unladen-mass", "unladen-weight", "running-order"]);

    public static FactDeclaration Length { get; } = Block.Fact(
        "length", Q.Length, "4.98 m", "overall, for the drawing", plausible: (2, 12), positive: true);

    public static FactDeclaration Width { get; } = Block.Fact(
        "width", Q.Length, "1.93 m", "body without mirrors", Need.ForResults, plausible: (1, 2.7), positive: true);

    public static FactDeclaration Height { get; } = Block.Fact(
        "height", Q.Length, "1.82 m", "road to roof", Need.ForResults, plausible: (1, 4), positive: true);

    public static FactDeclaration CgHeight { get; } = Block.Fact(
        "cg-height", Q.Length, "0.62 m", "centre of gravity above the road, as under aboard", Need.ForResults,
        otherwise: "none (cars 0.50 to 0.60 m, tall vehicles 0.65 to 0.80 m; value from memory)", plausible: (0.3, 1.6), positive: true);

    public static FactDeclaration Body { get; } = Block.Fact(
        "body", Signature.Choice("saloon", "hatch", "estate", "suv", "mpv", "van", "pick-up"), "mpv", "the body's shape, for its drag", Need.ForResults);

    public static FactDeclaration FrontalArea { get; } = Block.Fact(
        "frontal-area", Q.Area, "2.9 m²", "front view", Need.ForResults, VehicleEstimates.FrontalArea, plausible: (1, 8), positive: true);

    public static FactDeclaration DragCoefficient { get; } = Block.Fact(
        "drag-coefficient", Q.Number, "0.30", "with `frontal-area`", Need.ForResults, VehicleEstimates.DragCoefficient, plausible: (0.15, 1.2), positive: true);

    public static FactDeclaration DragArea { get; } = Block.Fact(
        "drag-area", Q.Area, "0.87 m²", "drag coefficient times frontal area, in place of the two", Need.ForResults, VehicleEstimates.DragArea,
        plausible: (0.3, 5), positive: true);

    public static FactDeclaration RoadLoadConstant { get; } = Block.Fact(
        "road-load-constant", Q.Force, "34.98 lbf", "dynamometer A; with the next two in place of drag and rolling", plausible: (0, 3000));

    public static FactDeclaration RoadLoadLinear { get; } = Block.Fact(
        "road-load-linear", Q.ForcePerSpeed, "0.0865 lbf/mph", "dynamometer B", plausible: (-50, 100));

    public static FactDeclaration RoadLoadSquare { get; } = Block.Fact(
        "road-load-square", Q.ForcePerSpeedSquared, "0.0148 lbf/mph²", "dynamometer C", plausible: (0, 10));

    public static FactDeclaration Rolling { get; } = Block.Fact(
        "rolling", Q.Ratio, "0.0095", "rolling coefficient", Need.ForResults, otherwise: AxleEstimates.RollingWords, plausible: (0.003, 0.05), positive: true,
        aliases: ["rolling-resistance", "crr"]);

    public static FactDeclaration RotatingMass { get; } = Block.Fact(
        "rotating-mass", Q.Ratio, "3 %", "what turning parts add to inertia", Need.ForResults,
        Estimate.Constant(0.03, "3 %", "defaults of the EU's Joint Research Centre for Regulation (EU) 2017/1151"), plausible: (0, 0.3));

    public static FactDeclaration YawInertia { get; } = Block.Fact(
        "yaw-inertia", Q.YawInertia, "4400 kg·m²", "about its own centre of gravity, as under aboard", Need.ForResults, VehicleEstimates.YawInertia,
        plausible: (200, 60_000), positive: true);

    public static FactDeclaration Drive { get; } = Block.Fact(
        "drive", Signature.Choice("front", "rear", "all"), "rear", "the driven wheels", Need.ForResults);

    public static FactDeclaration Abs { get; } = Block.Fact("abs", Signature.YesNo, "yes", "antilock brakes", Need.ForResults);

    public static FactDeclaration BrakeMass { get; } = Block.Fact(
        "brake-mass", Q.Mass, "36 kg", "all discs and drums together, for how warm they get", Need.ForResults, VehicleEstimates.BrakeMass, plausible: (4, 400), positive: true);

    public static FactDeclaration ParkingAxle { get; } = Block.Fact(
        "parking-axle", Signature.Choice("front", "rear", "all"), "rear", "the wheels that the parking brake holds", Need.ForResults, otherwise: "rear, marked", aliases: ["handbrake"]);

    public static FactDeclaration StabilityControl { get; } = Block.Fact(
        "stability-control", Signature.YesNo, "yes", "has a mode that steadies a trailer");

    public static FactDeclaration GrossRating { get; } = Block.Fact(
        "gross-rating", Q.Mass, "2950 kg", "most that the vehicle may weigh, tongue load included", Need.ForVerdict, plausible: (500, 12_000), positive: true,
        aliases: ["gvwr", "gvm", "mam", "gross", "gross-weight", "gross-mass", "permitted-mass"]);

    public static FactDeclaration CombinedRating { get; } = Block.Fact(
        "combined-rating", Q.Mass, "5000 kg", "most that vehicle and trailer may weigh together", Need.ForVerdict, plausible: (800, 30_000), positive: true,
        aliases: ["gcwr", "gcm", "gross-train", "train-weight", "train-mass", "combined-weight", "combined-mass"]);

    public static FactDeclaration CargoRating { get; } = Block.Fact(
        "cargo-rating", Q.Mass, "2430 lb", "placard: occupants and cargo, tongue load included", plausible: (100, 6000), positive: true,
        aliases: ["payload"]);

    public static FactDeclaration RoofRating { get; } = Block.Fact(
        "roof-rating", Q.Mass, "80 kg", "on the roof, rack included", plausible: (20, 500), positive: true, aliases: ["roof-load"]);

    public static FactDeclaration TowingRating { get; } = Block.Fact(
        "towing-rating", Q.Mass, "2300 kg", "heaviest trailer with brakes, with weight distribution if the maker asks for it", Need.ForVerdict,
        plausible: (200, 20_000), positive: true, aliases: ["tow-rating", "tow-capacity", "towing-capacity", "towing-limit", "braked-rating"]);

    public static FactDeclaration TowingRatingUnbraked { get; } = Block.Fact(
        "towing-rating-unbraked", Q.Mass, "580 kg", "heaviest trailer without brakes", Need.ForResults, plausible: (100, 3500), positive: true);

    public static FactDeclaration TowingRatingCarrying { get; } = Block.Fact(
        "towing-rating-carrying", Q.Mass, "5000 lb", "heaviest trailer without weight distribution, where the maker tells the two apart",
        otherwise: "none: the higher rating is never taken in its place", plausible: (200, 20_000), positive: true);

    public static FactDeclaration TongueRating { get; } = Block.Fact(
        "tongue-rating", Q.Mass, "230 kg", "most on the ball, vertically", Need.ForVerdict, plausible: (20, 2000), positive: true,
        aliases: ["noseweight", "nose-load", "nose-weight", "ball-weight", "ball-load", "tongue-weight", "s-value"]);

    public static FactDeclaration TongueRatingCarrying { get; } = Block.Fact(
        "tongue-rating-carrying", Q.Mass, "500 lb", "most on the ball without weight distribution",
        otherwise: "none: the higher rating is never taken in its place", plausible: (20, 2000), positive: true);

    public static FactDeclaration TongueLeast { get; } = Block.Fact(
        "tongue-least", Q.Mass, "25 kg", "least load on the ball that the maker asks for", otherwise: "by `rules`", plausible: (5, 500), positive: true);

    public static FactDeclaration DValue { get; } = Block.Fact(
        "d-value", Q.Force, "10.4 kN", "on the plate of the ball or its bracket", plausible: (1000, 200_000), positive: true);

    public static FactDeclaration Tank { get; } = Block.Fact(
        "tank", TankSignature(), "fuel 36 us-gal diesel at 88 in behind front-axle", "a tank built in, full volume", Need.ForResults, key: ["name"]);

    public static FactDeclaration Spare { get; } = Block.Fact("spare", Signature.Tyre, "185/65R15 88H", "the spare wheel's tyre");

    public static FactDeclaration Axle { get; } = Block.Fact(
        "axle", Signature.Of(new Slot("name", new ChoiceForm(["front", "rear"]))), "front", "an axle: exactly `front` and `rear`", Need.ForVerdict, key: ["name"]);

    public static FactDeclaration Aboard { get; } = Block.Fact(
        "aboard", Signature.Of(new Slot("nothing", new ChoiceForm(["nothing"]), IsOptional: true)), "nothing",
        "what the weighed masses included", Need.ForResults, otherwise: "taken as weighed empty, marked");

    public static FactDeclaration Electric { get; } = Block.Fact("electric", Signature.Nothing, "", "battery drive", Need.ForResults);

    public static FactDeclaration Combustion { get; } = Block.Fact("combustion", Signature.Nothing, "", "engine drive", Need.ForResults);

    internal static Signature TankSignature() => Signature.Of(
        new Slot("name", new NameForm()),
        new Slot("volume", new QuantityForm([Q.Volume])),
        new Slot("fluid", new ChoiceForm(Fluids.Names)),
        new Slot("place", new PositionForm(), "at"),
        new Slot("high", new QuantityForm([Q.Length]), "high", IsOptional: true));
}

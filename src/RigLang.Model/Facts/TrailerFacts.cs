using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of a trailer.</summary>
public static class TrailerFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Trailer, "a trailer on a ball coupling");

    public static FactDeclaration Mass { get; } = Block.Fact(
        "mass", Q.Mass, "1790 kg ± 15 kg", "whole trailer, uncoupled, as under aboard", Need.ForVerdict, plausible: (50, 10_000), positive: true,
        aliases: ["tare", "tare-weight", "tare-mass", "unladen", "unladen-weight", "unladen-mass", "empty-weight", "weight"]);

    public static FactDeclaration Tongue { get; } = Block.Fact(
        "tongue", Q.Mass, "168 kg ± 4 kg", "on the coupling, standing level, as under aboard", Need.ForVerdict, plausible: (0, 1500),
        aliases: ["noseweight", "nose-load", "nose-weight", "ball-weight", "tongue-weight"]);

    public static FactDeclaration CouplingToAxle { get; } = Block.Fact(
        "coupling-to-axle", Q.Length, "5.20 m", "ball centre to the middle of all axles", Need.ForVerdict, otherwise: "the mean of `behind-coupling`",
        plausible: (0.5, 15), positive: true);

    public static FactDeclaration CouplingToBody { get; } = Block.Fact(
        "coupling-to-body", Q.Length, "1.45 m", "ball centre to the front wall", Need.ForResults, plausible: (0.2, 5), positive: true, aliases: ["drawbar"]);

    public static FactDeclaration CouplingHeight { get; } = Block.Fact(
        "coupling-height", Q.Length, "0.43 m", "road to ball centre when the trailer stands level, as under aboard", Need.ForResults,
        otherwise: "the level isn't computed, and independent axles share as if level, marked", plausible: (0.2, 1.2), positive: true);

    public static FactDeclaration Length { get; } = Block.Fact("length", Q.Length, "7.6 m", "overall", Need.ForResults, plausible: (1, 16), positive: true);

    public static FactDeclaration BodyLength { get; } = Block.Fact(
        "body-length", Q.Length, "6.0 m", "the box only", Need.ForResults, TrailerEstimates.BodyLength, plausible: (0.5, 15), positive: true);

    public static FactDeclaration Width { get; } = Block.Fact("width", Q.Length, "2.30 m", "the box", Need.ForResults, plausible: (0.6, 2.7), positive: true);

    public static FactDeclaration Height { get; } = Block.Fact("height", Q.Length, "2.62 m", "road to roof", Need.ForResults, plausible: (0.4, 4.2), positive: true);

    public static FactDeclaration CgHeight { get; } = Block.Fact(
        "cg-height", Q.Length, "1.05 m", "centre of gravity above the road, as under aboard", Need.ForResults, plausible: (0.2, 2.5), positive: true);

    public static FactDeclaration Body { get; } = Block.Fact(
        "body", Signature.Choice("box", "rounded", "open", "boat", "flat"), "box", "the body's shape, for its drag", Need.ForResults);

    public static FactDeclaration FrontalArea { get; } = Block.Fact(
        "frontal-area", Q.Area, "5.5 m²", "front view", Need.ForResults, TrailerEstimates.FrontalArea, plausible: (0.3, 10), positive: true);

    public static FactDeclaration DragCoefficient { get; } = Block.Fact(
        "drag-coefficient", Q.Number, "0.32", "with `frontal-area`: what the trailer adds to its tow vehicle", plausible: (0.02, 1.5), positive: true);

    public static FactDeclaration DragArea { get; } = Block.Fact(
        "drag-area", Q.Area, "1.65 m²", "what the trailer adds to its tow vehicle's drag area, in place of the two", Need.ForResults,
        otherwise: "the two above; else such that the train comes to 0.55 (box) or 0.35 (rounded) of the trailer's front (values from memory, weak); flat, open and boat add 10, 20 and 30 % of the vehicle's own (our choice)", plausible: (0.05, 6), positive: true);

    public static FactDeclaration Rolling { get; } = Block.Fact(
        "rolling", Q.Ratio, "0.011", "rolling coefficient", Need.ForResults, otherwise: AxleEstimates.RollingWords, plausible: (0.003, 0.05), positive: true,
        aliases: ["rolling-resistance", "crr"]);

    public static FactDeclaration YawInertia { get; } = Block.Fact(
        "yaw-inertia", Q.YawInertia, "5800 kg·m²", "about its own centre of gravity, as under aboard", Need.ForResults, TrailerEstimates.YawInertia,
        plausible: (10, 100_000), positive: true);

    public static FactDeclaration GrossRating { get; } = Block.Fact(
        "gross-rating", Q.Mass, "2200 kg", "most that the trailer may weigh, tongue load included", Need.ForVerdict, plausible: (100, 12_000), positive: true,
        aliases: ["gvwr", "gtm", "atm", "mam", "mtplm", "gross", "gross-weight", "gross-mass"]);

    public static FactDeclaration CargoRating { get; } = Block.Fact(
        "cargo-rating", Q.Mass, "1180 lb", "placard: most cargo", plausible: (20, 6000), positive: true, aliases: ["payload"]);

    public static FactDeclaration TongueRating { get; } = Block.Fact(
        "tongue-rating", Q.Mass, "250 kg", "on the coupling's plate (S)", Need.ForResults, plausible: (20, 2000), positive: true, aliases: ["s-value", "nose-load-limit"]);

    public static FactDeclaration TongueLeast { get; } = Block.Fact(
        "tongue-least", Q.Mass, "50 kg", "least load that drawbar or maker asks for", otherwise: "by `rules`", plausible: (5, 500), positive: true);

    public static FactDeclaration Coupling { get; } = Block.Fact(
        "coupling", Q.Size, "2-5/16 in", "ball size of the coupling head", Need.ForResults, plausible: (0.04, 0.08), positive: true,
        aliases: ["coupler", "hitch-head"]);

    public static FactDeclaration CouplingRating { get; } = Block.Fact(
        "coupling-rating", Q.Mass, "12_500 lb", "trailer mass on the coupling's plate", plausible: (300, 20_000), positive: true, aliases: ["coupler-rating"]);

    public static FactDeclaration DValue { get; } = Block.Fact("d-value", Q.Force, "15.8 kN", "on the coupling's plate", plausible: (1000, 200_000), positive: true);

    public static FactDeclaration Stabiliser { get; } = Block.Fact(
        "stabiliser", Signature.YesNo, "yes", "coupling head that damps swing (ISO 11555-1)", otherwise: "no, said", aliases: ["stabilizer"]);

    public static FactDeclaration YawFriction { get; } = Block.Fact(
        "yaw-friction", Signature.Of(new Slot(Signature.ValueRole, new QuantityOrNoneForm(Q.Torque))), "280 N·m", "friction moment of that head; the hitch's is added; `none` says there is none",
        Need.ForResults, otherwise: "0, said", plausible: (10, 3000));

    public static FactDeclaration StabilityControl { get; } = Block.Fact(
        "stability-control", Signature.YesNo, "no", "brakes itself against swing", otherwise: "no, said");

    public static FactDeclaration SpeedRating { get; } = Block.Fact("speed-rating", Q.Speed, "100 km/h", "on the trailer's plate", plausible: (5, 60), positive: true);

    public static FactDeclaration Brakes { get; } = Block.Fact(
        "brakes", Signature.Choice("none", "overrun", "electric", "hydraulic"), "electric", "service brakes", Need.ForVerdict);

    public static FactDeclaration BrakeRatio { get; } = Block.Fact(
        "brake-ratio", Q.Ratio, "50 %", "brake force as a share of the weight on the braked axles", Need.ForResults,
        TrailerEstimates.BrakeRatio, plausible: (0.1, 1));

    public static FactDeclaration BrakeMass { get; } = Block.Fact(
        "brake-mass", Q.Mass, "24 kg", "all drums or discs together, for how warm they get", Need.ForResults, TrailerEstimates.BrakeMass, plausible: (4, 400), positive: true);

    public static FactDeclaration ShockAbsorbers { get; } = Block.Fact(
        "shock-absorbers", Signature.YesNo, "yes", "hydraulic, on all axles", Need.ForResults, aliases: ["dampers"]);

    public static FactDeclaration Breakaway { get; } = Block.Fact("breakaway", Signature.YesNo, "yes", "brakes by itself when it separates", Need.ForResults);

    public static FactDeclaration ParkingBrake { get; } = Block.Fact("parking-brake", Signature.YesNo, "yes", "holds by itself when parked", Need.ForResults);

    public static FactDeclaration Suspension { get; } = Block.Fact(
        "suspension", Signature.Choice("equalised", "independent"), "independent", "how several axles share their load", Need.ForResults,
        otherwise: "equalised, marked", aliases: ["load-sharing"]);

    public static FactDeclaration Tank { get; } = Block.Fact(
        "tank", VehicleFacts.TankSignature(), "fresh 110 L water at 0.35 m ahead of axle", "a tank built in, full volume", Need.ForResults, key: ["name"]);

    public static FactDeclaration Spare { get; } = Block.Fact("spare", Signature.Tyre, "ST225/75R15 117M E", "the spare wheel's tyre");

    public static FactDeclaration Axle { get; } = Block.Fact(
        "axle", Signature.Of(new Slot("name", new NameForm())), "pair", "an axle, or several equal ones with `count`", Need.ForVerdict, key: ["name"]);

    public static FactDeclaration Aboard { get; } = Block.Fact(
        "aboard", Signature.Of(new Slot("nothing", new ChoiceForm(["nothing"]), IsOptional: true)), "nothing", "what the weighed masses included",
        Need.ForResults, otherwise: "taken as weighed empty, marked");
}

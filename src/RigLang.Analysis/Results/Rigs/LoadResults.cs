using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Rigs;

/// <summary>What stands on which axle, as masses in kg.</summary>
public static class LoadResults
{
    private const string Beam = "moments about the axles of a rigid beam (OpenStax, University Physics 1, chapter 12)";
    private const string Couple = "moments about the axles, with the couple of the spring bars on both vehicles";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> FrontAxleLoad { get; } = Set.Add(
        "front-axle-load", QuantityKinds.Mass, "Front axle load", "on the vehicle's front axle, loaded and coupled as driven",
        "front-axle-solo − (ball-load × hitch-overhang − bar-couple) ÷ wheelbase", Couple,
        (read, rig) => read.Get(LoadStates.AsDriven, rig).Front / Constants.Gravity);

    public static ResultDeclaration<RigStudy> RearAxleLoad { get; } = Set.Add(
        "rear-axle-load", QuantityKinds.Mass, "Rear axle load", "on the vehicle's rear axle, loaded and coupled as driven",
        "rear-axle-solo + (ball-load × (wheelbase + hitch-overhang) − bar-couple) ÷ wheelbase", Couple,
        (read, rig) => read.Get(LoadStates.AsDriven, rig).Rear / Constants.Gravity);

    public static ResultDeclaration<RigStudy> VehicleLoad { get; } = Set.Add(
        "vehicle-load", QuantityKinds.Mass, "Vehicle on its wheels", "both axles of the vehicle, the share of the trailer that it carries included",
        "front-axle-load + rear-axle-load", Beam,
        (read, rig) => read.Get(LoadStates.AsDriven, rig).Vehicle / Constants.Gravity);

    public static ResultDeclaration<RigStudy> TrailerAxleLoad { get; } = Set.Add(
        "trailer-axle-load", QuantityKinds.Mass, "Trailer axles together", "on all the trailer's axles, coupled as driven",
        "trailer-load − tongue-load + bar-couple ÷ coupling-to-axle", Couple,
        (read, rig) => Trailing(read, rig, () => read.Get(LoadStates.AsDriven, rig).TrailerAxles / Constants.Gravity));

    public static ResultDeclaration<RigStudy> TrailerLoad { get; } = Set.Add(
        "trailer-load", QuantityKinds.Mass, "Trailer, loaded", "the whole trailer with its load, uncoupled",
        "mass − what was aboard + loads on trailer", "sum",
        (read, rig) => Trailing(read, rig, () => read.Get(LoadStates.Trailer, rig).Mass));

    public static ResultDeclaration<RigStudy> TrainLoad { get; } = Set.Add(
        "train-load", QuantityKinds.Mass, "Vehicle and trailer", "everything together",
        "front-axle-load + rear-axle-load + trailer-axle-load", "sum",
        (read, rig) => read.Get(LoadStates.AsDriven, rig).Total / Constants.Gravity);

    public static ResultDeclaration<RigStudy> TongueLoad { get; } = Set.Add(
        "tongue-load", QuantityKinds.Mass, "Tongue load", "on the coupling, trailer level and loaded, bars slack: what a tongue scale shows and what the plates limit",
        "trailer-load × (coupling-to-axle − mass centre) ÷ coupling-to-axle", Beam,
        (read, rig) => Trailing(read, rig, () => read.Get(LoadStates.Trailer, rig).TongueMass));

    public static ResultDeclaration<RigStudy> BallLoad { get; } = Set.Add(
        "ball-load", QuantityKinds.Mass, "Net load at the ball", "what the trailer puts on the vehicle as driven; set bars make it less than the tongue load",
        "tongue-load − bar-couple ÷ coupling-to-axle", Couple,
        (read, rig) => Trailing(read, rig, () => read.Get(LoadStates.AsDriven, rig).Ball / Constants.Gravity));

    public static ResultDeclaration<RigStudy> FrontAxleSolo { get; } = Set.Add(
        "front-axle-solo", QuantityKinds.Mass, "Front axle, solo", "loaded, without the trailer, hitch head on",
        "carries − what was aboard + loads on vehicle, by moments about the rear axle", Beam,
        (read, rig) => read.Get(LoadStates.Solo, rig).Front / Constants.Gravity);

    public static ResultDeclaration<RigStudy> RearAxleSolo { get; } = Set.Add(
        "rear-axle-solo", QuantityKinds.Mass, "Rear axle, solo", "loaded, without the trailer, hitch head on",
        "carries − what was aboard + loads on vehicle, by moments about the front axle", Beam,
        (read, rig) => read.Get(LoadStates.Solo, rig).Rear / Constants.Gravity);

    public static ResultDeclaration<RigStudy> FrontAxleSlack { get; } = Set.Add(
        "front-axle-slack", QuantityKinds.Mass, "Front axle, bars slack", "coupled, spring bars slack: the other end of what restoration is counted from",
        "front-axle-solo − tongue-load × hitch-overhang ÷ wheelbase", Beam,
        (read, rig) => Trailing(read, rig, () => read.Get(LoadStates.Slack, rig).Front / Constants.Gravity));

    public static ResultDeclaration<RigStudy> RearAxleSlack { get; } = Set.Add(
        "rear-axle-slack", QuantityKinds.Mass, "Rear axle, bars slack", "coupled, spring bars slack",
        "rear-axle-solo + tongue-load × (wheelbase + hitch-overhang) ÷ wheelbase", Beam,
        (read, rig) => Trailing(read, rig, () => read.Get(LoadStates.Slack, rig).Rear / Constants.Gravity));

    /// <summary>A result that only a rig with a trailer has.</summary>
    internal static double Trailing(Tracking.Reader read, RigStudy rig, Func<double> value) => rig.HasTrailer ? value() : read.NotApplicable();
}

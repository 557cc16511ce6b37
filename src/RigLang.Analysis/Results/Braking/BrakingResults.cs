using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Braking;

/// <summary>How the rig stops from its speed, and where it stands parked.</summary>
public static class BrakingResults
{
    private const string Grip = "the vehicle's tyres at their grip, as with antilock brakes and a driver who brakes fully; what braking moves from axle to axle, and the time in which brakes build up, are left out";
    private const string Overrun = "; an overrun brake gives 7 × the push beyond 3 % of the trailer's weight (after UN R13 annex 12, values from memory)";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> BrakingRate { get; } = Set.Add(
        "braking-rate", QuantityKinds.Acceleration, "Full braking", "how hard the rig slows down on a level road with all its brakes: the law asks 5.0 m/s² of most vehicles",
        "g × (friction × vehicle-load + brake-ratio × trailer-axle-load) ÷ train-load", Grip + Overrun,
        (read, rig) => read.Get(Stops.AsDriven, rig).Deceleration);

    public static ResultDeclaration<RigStudy> StopDistance { get; } = Set.Add(
        "stop-distance", QuantityKinds.StopLength, "Stops within", "from seeing to standing, at the rig's speed on a level road",
        "speed × reaction-time + speed² ÷ (2 × braking-rate)", Grip,
        (read, rig) => Distance(read, rig, read.Get(BrakingRate, rig)));

    public static ResultDeclaration<RigStudy> StopDistanceUnbraked { get; } = Set.Add(
        "stop-distance-unbraked", QuantityKinds.StopLength, "Stops within, trailer's brakes dead", "the same when the trailer's brakes don't work: a loose plug, an unset controller, a seized overrun device",
        "as stop-distance, brake-ratio 0", Grip,
        (read, rig) => !rig.HasTrailer || Stops.IsTrailerBraked(read, rig) == false
            ? read.NotApplicable()
            : Distance(read, rig, read.Get(Stops.WithoutTrailerBrakes, rig).Deceleration));

    public static ResultDeclaration<RigStudy> BrakingPush { get; } = Set.Add(
        "braking-push", QuantityKinds.Force, "Push at the ball, full braking", "how the trailer shoves the vehicle when it brakes fully; below zero it holds the vehicle back",
        "trailer-load × braking-rate − the trailer's brake force", Grip + Overrun,
        (read, rig) => LoadResults.Trailing(read, rig, () => read.Get(Stops.AsDriven, rig).Push));

    public static ResultDeclaration<RigStudy> ParkingGrade { get; } = Set.Add(
        "parking-grade", QuantityKinds.Slope, "Parks on up to", "the steepest slope on which the parking brake holds the whole rig for certain: a trailer's own helps where `parking-brake yes` is written",
        "the lower of: what holds gross-rating on 20 % (the trailer's on 18 %), under train-load; friction × load on the braked wheels ÷ train-load",
        "49 CFR 571.135 asks 20 % of a vehicle, StVZO 41(9) 18 % of a trailer; built better it holds more",
        (read, rig) => read.Get(Stops.ParkingGrade, rig));

    private static double Distance(Reader read, RigStudy rig, double deceleration) =>
        StoppingDistance.Of(read.Quantity(rig.Rig, RigFacts.Speed), read.Figure(FigureFacts.ReactionTime), deceleration);
}

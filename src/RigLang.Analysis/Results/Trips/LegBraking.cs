using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Holding the rig back on a leg, and stopping it.</summary>
public static class LegBraking
{
    private const string Descent = "road load stretch by stretch at steady speeds; an overrun trailer brakes first, then regeneration takes, then engine brake or retarder, then the brakes. Braking for bends, junctions and traffic isn't counted";
    private const string Heat = "heat shared as the loads on braked wheels; cast iron, 480 J/(kg·K); cooled by the air twice as fast as heavy drums (after the US Grade Severity Rating System, values from memory; twice is our choice); begins at 66 °C of ordinary use. A reckoning with weak figures, no verdict: look for smell, smoke, a long pedal";

    public static ResultSet<LegSubject> Set { get; } = new(ResultScope.Leg);

    public static ResultDeclaration<LegSubject> HeldBack { get; } = Set.Add(
        "held-back", QuantityKinds.Energy, "Held back downhill", "at the wheels: what of the height is left when rolling and air have taken theirs",
        "sum over the descents of (height × mass × g − rolling − air)", Descent,
        (read, leg) => read.Get(HoldingBack.Whole, leg).ToHold);

    public static ResultDeclaration<LegSubject> Regained { get; } = Set.Add(
        "energy-regained", QuantityKinds.Energy, "Regained", "into the battery, on the way down",
        "regeneration × what is held back, up to regeneration-power, and to what the battery takes at its charge: its charge-points, nothing when it is full", Descent,
        (read, leg) => Drives.Engine(leg.Trip.Rig) is not null || IsLevel(read, leg) ? read.NotApplicable() : read.Get(Charge.BatteryUse, leg).Recovered);

    public static ResultDeclaration<LegSubject> Refused { get; } = Set.Add(
        "energy-refused", QuantityKinds.Energy, "Refused by the full battery", "what regeneration would have brought besides, had the battery not been so full; the brakes take it. Not shown where it takes all, or the order of the hills isn't known",
        "energy-regained of an emptier battery − energy-regained", Descent,
        (read, leg) => Drives.Engine(leg.Trip.Rig) is not null || IsLevel(read, leg) || read.Get(Charge.BatteryUse, leg).Refused is 0 ? read.NotApplicable() : read.Get(Charge.BatteryUse, leg).Refused);

    public static ResultDeclaration<LegSubject> EngineHeld { get; } = Set.Add(
        "engine-held", QuantityKinds.Energy, "Held by the engine", "by engine drag, exhaust brake or retarder, at the wheels",
        "the lower of what is held back and retarding-power × time", Descent,
        (read, leg) => Drives.Engine(leg.Trip.Rig) is null || IsLevel(read, leg) ? read.NotApplicable() : read.Get(HoldingBack.Whole, leg).Retarded);

    public static ResultDeclaration<LegSubject> OverrunHeld { get; } = Set.Add(
        "overrun-held", QuantityKinds.Energy, "Taken by the overrun brakes", "in the trailer's drums before anything else may hold it: regeneration never sees it",
        "7 ÷ 8 × (what the trailer pushes − 3 % of its weight) along the descents", Descent + "; after UN R13 annex 12, values from memory",
        (read, leg) => !leg.Trip.Rig.HasTrailer || IsLevel(read, leg) || read.WordIfKnown(leg.Trip.Rig.Trailer, TrailerFacts.Brakes) != "overrun"
            ? read.NotApplicable()
            : read.Get(HoldingBack.Whole, leg).Overrun);

    public static ResultDeclaration<LegSubject> BrakeHeat { get; } = Set.Add(
        "brake-heat", QuantityKinds.Energy, "Heat in the brakes", "what vehicle's and trailer's brakes have to take on the way down",
        "held-back − what regeneration or the engine holds", Descent,
        (read, leg) => read.Get(HoldingBack.Whole, leg).Friction);

    public static ResultDeclaration<LegSubject> BrakeTemperature { get; } = Set.Add(
        "brake-temperature", QuantityKinds.Temperature, "Vehicle's brakes up to", "the hottest on the leg, on the mean of all wheels; not shown where the order of the hills isn't known",
        "brake-mass × 480 J/(kg·K) warmed by its share of brake-heat, cooled by 2 × (1.23 + 0.0256 × mph) an hour", Heat,
        (read, leg) => Ordered(read, leg, HoldingBack.VehicleBrakes));

    public static ResultDeclaration<LegSubject> TrailerBrakeTemperature { get; } = Set.Add(
        "trailer-brake-temperature", QuantityKinds.Temperature, "Trailer's brakes up to", "the same for the trailer; not shown where it has no brakes",
        "as brake-temperature", Heat,
        (read, leg) => Ordered(read, leg, HoldingBack.TrailerBrakes));

    public static ResultDeclaration<LegSubject> StopDistance { get; } = Set.Add(
        "leg-stop-distance", QuantityKinds.StopLength, "Longest stop", "from seeing to standing, where it is longest on the leg: by its speed, and by how it falls there",
        "speed × reaction-time + speed² ÷ (2 × (braking-rate + g × sine of the grade)), at its most", "as stop-distance; the grade helps or hinders",
        (read, leg) =>
        {
            var (driven, rate, reaction) = (read.Get(Driving.Driven, leg), read.Get(Braking.BrakingResults.BrakingRate, leg.Trip.Rig), read.Figure(FigureFacts.ReactionTime));
            var longest = driven.Stretches.Where(stretch => stretch.Length > 0).Select(stretch => StoppingDistance.Of(stretch.Speed, reaction, rate, stretch.Grade)).DefaultIfEmpty(double.NaN).ToList();
            return longest.Any(double.IsNaN) ? double.NaN : longest.Max();
        });

    /// <summary>Nothing is held back: there is nothing to share out.</summary>
    private static bool IsLevel(Reader read, LegSubject leg) => read.Get(HeldBack, leg) == 0;

    private static double Ordered(Reader read, LegSubject leg, Computation<LegSubject, WarmBrakes> brakes) =>
        !Driving.WayOf(leg).IsOrdered || IsLevel(read, leg) ? read.NotApplicable() : read.Get(brakes, leg).Hottest;
}

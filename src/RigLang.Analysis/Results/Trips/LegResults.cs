using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>What a leg takes in time and energy, and what is left where it ends.</summary>
public static class LegResults
{
    private const string RoadLoad = "road load stretch by stretch at steady speeds: rolling, air in the wind and density there, grade; starting and stopping isn't counted";
    private const string BatteryEnergy = "work at the wheels ÷ drive-efficiency (less in cold and heat, by cold-loss) − what regeneration brings back + auxiliary × time on the move";
    private const string Definition = "definition";

    public static ResultSet<LegSubject> Set { get; } = new(ResultScope.Leg);

    public static ResultDeclaration<LegSubject> Distance { get; } = Set.Add(
        "leg-distance", QuantityKinds.Distance, "Distance", "along the road",
        "distance; or the sections' sum; or the track's length", Definition,
        (read, leg) => Driving.WayOf(leg).Distance(read));

    public static ResultDeclaration<LegSubject> Time { get; } = Set.Add(
        "leg-time", QuantityKinds.Time, "Time", "driving, delays included",
        "sum of each stretch ÷ the speed held there, + delay", "the lower of speed and speed-limit; less where power runs out",
        (read, leg) => read.Get(Clock.LegTime, leg));

    public static ResultDeclaration<LegSubject> Speed { get; } = Set.Add(
        "leg-speed", QuantityKinds.Speed, "Mean speed", "on the move, delays left out",
        "leg-distance ÷ (leg-time − delay)", Definition,
        (read, leg) => read.Get(Distance, leg) / read.Get(Driving.MovingTime, leg));

    public static ResultDeclaration<LegSubject> Arrival { get; } = Set.Add(
        "arrival", QuantityKinds.Time, "Arrival", "time since departure from the start; shown as date and time by the clock still in force where `depart` says when that was",
        "sum of leg-time and of stop-time before it", Definition,
        (read, leg) => read.Get(Clock.Arrival, leg),
        (leg, seconds, _) => Clock.Write(leg, seconds, onArrival: true));

    public static ResultDeclaration<LegSubject> EnergyUsed { get; } = Set.Add(
        "energy-used", QuantityKinds.Energy, "Energy used", "out of the battery, what comes back downhill taken off",
        BatteryEnergy, RoadLoad,
        (read, leg) => read.Get(Charge.BatteryUse, leg).Battery);

    public static ResultDeclaration<LegSubject> EnergyPerDistance { get; } = Set.Add(
        "energy-per-distance", QuantityKinds.EnergyPerDistance, "Energy per distance", "out of the battery",
        "energy-used ÷ leg-distance", RoadLoad,
        (read, leg) => read.Get(EnergyUsed, leg) / read.Get(Distance, leg));

    public static ResultDeclaration<LegSubject> FuelUsed { get; } = Set.Add(
        "fuel-used", QuantityKinds.Volume, "Fuel used", "out of the tank",
        "fuel for the crank power of each stretch × its time", RoadLoad + "; typical engine maps, scaled by consumption where that is written",
        (read, leg) => read.Get(Charge.FuelVolume, leg));

    public static ResultDeclaration<LegSubject> FuelMass { get; } = Set.Add(
        "fuel-mass", QuantityKinds.Mass, "Fuel used, by mass", "out of the tank",
        "energy of the fuel ÷ its heating value", RoadLoad + "; heating values by mass: defaults of the EU's Joint Research Centre for Regulation (EU) 2017/1151",
        (read, leg) => Drives.Engine(leg.Trip.Rig) is null ? read.NotApplicable() : read.Get(Charge.FuelUse, leg).Mass(Drives.FuelOf(read, leg.Trip.Rig)));

    public static ResultDeclaration<LegSubject> FuelPerDistance { get; } = Set.Add(
        "fuel-per-distance", QuantityKinds.FuelPerDistance, "Fuel per distance", "out of the tank",
        "fuel-used ÷ leg-distance", RoadLoad,
        (read, leg) => read.Get(FuelUsed, leg) / read.Get(Distance, leg));

    public static ResultDeclaration<LegSubject> EnergyLeft { get; } = Set.Add(
        "energy-left", QuantityKinds.Ratio, "Left on arrival", "in the battery or the tank at the end of the leg, as a share of the whole",
        "what was there at the start − energy-used ÷ usable-energy, or − fuel-used ÷ tank", RoadLoad,
        (read, leg) => read.Get(Charge.AtEnd, leg));

    public static ResultDeclaration<LegSubject> LowestLeft { get; } = Set.Add(
        "lowest-left", QuantityKinds.Ratio, "Lowest on the way", "the least in the battery or the tank anywhere on the leg; on a pass less than on arrival",
        "least of energy-left at the end of each section or stretch of the track", RoadLoad,
        (read, leg) => Driving.WayOf(leg).IsOrdered ? read.Get(Charge.Along, leg).Lowest : read.NotApplicable());

    public static ResultDeclaration<LegSubject> ReserveRoom { get; } = Set.Add(
        "reserve-room", QuantityKinds.Ratio, "Above the reserve", "what is left on arrival beyond the trip's reserve, as a share of the whole; negative is what is lacking",
        "energy-left − reserve; a reserve that is a distance counts at this leg's pace", Definition,
        (read, leg) => TripResults.ReserveShare(read, leg) is { } reserve ? read.Get(EnergyLeft, leg) - reserve : read.NotApplicable());

    public static ResultDeclaration<LegSubject> FuelLeft { get; } = Set.Add(
        "fuel-left", QuantityKinds.Volume, "Fuel left on arrival", "in the tank at the end of the leg",
        "energy-left × tank", RoadLoad,
        (read, leg) => Drives.Engine(leg.Trip.Rig) is null ? read.NotApplicable() : read.Get(Charge.AtEnd, leg) * read.Get(Drives.TankVolume, leg.Trip.Rig));

    public static ResultDeclaration<LegSubject> RangeLeft { get; } = Set.Add(
        "range-left", QuantityKinds.Distance, "Range left at this pace", "how far what is left would go on a road like this leg, down to empty",
        "energy-left × leg-distance ÷ share taken by the leg", RoadLoad,
        (read, leg) =>
        {
            var taken = read.Get(Charge.Taken, leg);
            // Downhill legs may give more than they take: there is no range at such a pace.
            return taken <= 0 ? read.NotApplicable() : Math.Max(0, read.Get(Charge.AtEnd, leg)) * read.Get(Distance, leg) / taken;
        });

    public static ResultDeclaration<LegSubject> Climb { get; } = Set.Add(
        "leg-climb", QuantityKinds.Height, "Climb", "sum of all climbs; a track's heights are smoothed so that noise adds none",
        "climb; or the rising sections; or the smoothed track", "taut string within ± 4 m of the track's heights",
        (read, leg) => Driving.WayOf(leg).Climb(read));

    public static ResultDeclaration<LegSubject> Descent { get; } = Set.Add(
        "leg-descent", QuantityKinds.Height, "Descent", "sum of all descents",
        "descent; or the falling sections; or the smoothed track", "taut string within ± 4 m of the track's heights",
        (read, leg) => Driving.WayOf(leg).Descent(read));

    public static ResultDeclaration<LegSubject> RecordedClimb { get; } = Set.Add(
        "recorded-climb", QuantityKinds.Height, "Climb as recorded", "sum of every rise between the track's points, the wandering of its heights included: what leg-climb would be without smoothing",
        "sum of the rises", Definition,
        (read, leg) => OfTrack(read, leg)?.RecordedClimb ?? read.NotApplicable());

    public static ResultDeclaration<LegSubject> ClimbError { get; } = Set.Add(
        "climb-error", QuantityKinds.Height, "Climb may be short by", "the most that smoothing takes from the hills that are left, at the foot and the top of each; waves lower than 8 m go altogether. It never adds any",
        "2 × 4 m × number of hills in the smoothed track", "taut string within ± 4 m of the track's heights",
        (read, leg) => OfTrack(read, leg) is { } track ? 2 * Mechanics.ElevationProfile.DefaultBand * track.Hills : read.NotApplicable());

    /// <summary>The track, where its heights are what the leg's hills are told by.</summary>
    private static TrackProfile? OfTrack(Reader read, LegSubject leg)
    {
        read.LineIfWritten(leg.Leg, Model.Facts.LegFacts.Journey.Gpx);
        return Driving.WayOf(leg) is { Form: WayForm.Track, Profile: { Climb: not double.NaN } profile } ? profile : null;
    }
}

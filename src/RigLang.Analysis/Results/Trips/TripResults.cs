using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>A trip as a whole.</summary>
public static class TripResults
{
    private const string Sum = "sum";

    public static ResultSet<TripStudy> Set { get; } = new(ResultScope.Trip);

    public static ResultDeclaration<TripStudy> TotalDistance { get; } = Set.Add(
        "total-distance", QuantityKinds.Distance, "Distance in all", "all legs", "sum of leg-distance", Sum,
        (read, trip) => trip.Legs.Sum(leg => read.Get(LegResults.Distance, leg)));

    public static ResultDeclaration<TripStudy> DrivingTime { get; } = Set.Add(
        "driving-time", QuantityKinds.Time, "Driving in all", "all legs, delays included", "sum of leg-time", Sum,
        (read, trip) => trip.Legs.Sum(leg => read.Get(LegResults.Time, leg)));

    public static ResultDeclaration<TripStudy> StandingTime { get; } = Set.Add(
        "standing-time", QuantityKinds.Time, "Standing in all", "stops on the way, the last place left out", "total-time − driving-time", Sum,
        (read, trip) => read.Get(TotalTime!, trip) - read.Get(DrivingTime, trip));

    public static ResultDeclaration<TripStudy> MostDrivingDay { get; } = Set.Add(
        "most-driving-day", QuantityKinds.Time, "Most driving in a day", "of all calendar days by the clocks in force", "largest sum of leg-time between two midnights", Sum,
        (read, trip) => read.Get(Days.OfTrip, trip) is { IsEmpty: false } days ? days.Max(day => day.Driving) : double.NaN);

    public static ResultDeclaration<TripStudy> TotalTime { get; } = Set.Add(
        "total-time", QuantityKinds.Time, "From start to end", "legs and stops, until the last leg's arrival", "arrival at the last place", Sum,
        (read, trip) => trip.Legs is [.., var last] ? read.Get(LegResults.Arrival, last) : read.NotApplicable());

    public static ResultDeclaration<TripStudy> TotalEnergy { get; } = Set.Add(
        "total-energy", QuantityKinds.Energy, "Energy in all", "out of the battery over all legs", "sum of energy-used", Sum,
        (read, trip) => Drives.Engine(trip.Rig) is not null ? read.NotApplicable() : trip.Legs.Sum(leg => read.Get(LegResults.EnergyUsed, leg)));

    public static ResultDeclaration<TripStudy> TotalFuel { get; } = Set.Add(
        "total-fuel", QuantityKinds.Volume, "Fuel in all", "out of the tank over all legs", "sum of fuel-used", Sum,
        (read, trip) => Drives.Engine(trip.Rig) is null ? read.NotApplicable() : trip.Legs.Sum(leg => read.Get(LegResults.FuelUsed, leg)));

    public static ResultDeclaration<TripStudy> TotalCost { get; } = Set.Add(
        "total-cost", QuantityKinds.Money, "Cost in all", "of all stops with a price; currencies are never converted, so there is no one sum where prices have several",
        "sum of stop-cost", Sum,
        (read, trip) => Costs.CurrencyOf(trip) is null
            ? read.NotApplicable()
            : trip.Stops.Where(stop => Costs.CurrencyOf(stop) is not null).Sum(stop => read.Get(StopResults.Cost, stop)),
        (trip, amount, _) => QuantityWriter.WriteMoney(amount, Costs.CurrencyOf(trip) ?? ""));

    public static ResultDeclaration<TripStudy> LeastLeft { get; } = Set.Add(
        "least-left", QuantityKinds.Ratio, "Least left anywhere", "in the battery or the tank, at any place or on the way there",
        "least of energy-left and lowest-left", Sum,
        (read, trip) => trip.Legs.IsEmpty ? read.NotApplicable() : trip.Legs.Min(leg => read.Get(Charge.Along, leg).Lowest));

    /// <summary>The leg that has least left; null while that isn't computed.</summary>
    public static LegSubject? LeastLeftOn(TripStudy trip) =>
        trip.Compute(LeastLeft, trip).IsComputed ? trip.Legs.MinBy(leg => trip.Compute(Charge.Along, leg).Value.Lowest) : null;

    /// <summary>The reserve as a share of battery or tank; a reserve written as a distance counts at the pace of the leg that ends there.</summary>
    internal static double? ReserveShare(Reader read, LegSubject leg)
    {
        if (read.LineIfWritten(leg.Trip.Block, TripFacts.Reserve)?.MeasureOf(Model.Declaring.Signature.ValueRole) is not { } reserve)
        {
            return null;
        }

        // A leg that gives more than it takes has a range without end.
        return reserve.Kind == QuantityKinds.Distance
            ? Math.Max(0, read.Get(Charge.Taken, leg)) * reserve.Value / read.Get(LegResults.Distance, leg)
            : Charge.Share(read, leg.Trip.Rig, reserve);
    }
}

using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>What happens at a stop.</summary>
public static class StopResults
{
    private const string Curve = "energy ÷ power along the vehicle's curve under the post's limit, integrated exactly; a cold battery takes less, which isn't counted";
    private const string Definition = "definition";

    public static ResultSet<StopSubject> Set { get; } = new(ResultScope.Stop);

    public static ResultDeclaration<StopSubject> EnergyCharged { get; } = Set.Add(
        "energy-charged", QuantityKinds.Energy, "Charged", "into the battery",
        "(charge-to − energy-left on arrival) × usable-energy", Definition,
        (read, stop) => read.Get(Charging.Energy, stop));

    public static ResultDeclaration<StopSubject> EnergyBought { get; } = Set.Add(
        "energy-bought", QuantityKinds.Energy, "From the post", "by the post's meter, what is lost on the way into the battery included",
        "energy-charged ÷ charge-efficiency", Definition,
        (read, stop) => read.Get(Charging.Bought, stop));

    public static ResultDeclaration<StopSubject> FuelTaken { get; } = Set.Add(
        "fuel-taken", QuantityKinds.Volume, "Refuelled", "into the tank",
        "refuel-to − fuel-left on arrival", Definition,
        (read, stop) => read.Get(Refuelling.Volume, stop));

    public static ResultDeclaration<StopSubject> ChargeTime { get; } = Set.Add(
        "charge-time", QuantityKinds.Time, "Charging", "on the plug",
        "usable-energy × ∫ d(charge) ÷ power(charge)", Curve,
        (read, stop) => read.Get(Charging.Time, stop));

    public static ResultDeclaration<StopSubject> StopTime { get; } = Set.Add(
        "stop-time", QuantityKinds.Time, "Stop", "from arrival to departure",
        "the latest of pause, connect + uncouple + charge-time, and until", Definition,
        (read, stop) => read.Get(Clock.StopEnd, stop) - read.Get(Clock.Arrival, stop.Leg));

    public static ResultDeclaration<StopSubject> LeavingWith { get; } = Set.Add(
        "leaving-with", QuantityKinds.Ratio, "Leaving with", "in the battery or the tank when the stop ends",
        "charge-to or refuel-to, never less than on arrival", Definition,
        (read, stop) => read.Get(Charge.AfterStop, stop));

    public static ResultDeclaration<StopSubject> Departure { get; } = Set.Add(
        "departure", QuantityKinds.Time, "Departure", "time since departure from the start; shown as date and time by the place's own clock where `depart` says when that was",
        "arrival + stop-time", Definition,
        (read, stop) => read.Get(Clock.StopEnd, stop),
        (stop, seconds, _) => Clock.Write(stop.Leg, seconds, onArrival: false));

    public static ResultDeclaration<StopSubject> Cost { get; } = Set.Add(
        "stop-cost", QuantityKinds.Money, "Cost", "of what is charged or refuelled, in the currency of the price",
        "energy-bought × price, or fuel-taken × price", Definition,
        (read, stop) => read.Get(Costs.OfStop, stop).Amount,
        (stop, amount, _) => QuantityWriter.WriteMoney(amount, Costs.CurrencyOf(stop) ?? ""));
}

using RigLang.Model.Declaring;
using RigLang.Model.Estimates;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>A stop of a trip. It ends at the latest of: pause over, charging done, the time of <c>until</c> reached.</summary>
public static class StopFacts
{
    public static BlockDeclaration Block { get; } = TripFacts.Block.Block(TripFacts.Stop);

    public static FactDeclaration Pause { get; } = Block.Fact("pause", Q.Time, "25 min", "at least", otherwise: "0", plausible: (0, 2_592_000), aliases: ["rest", "break"]);

    public static FactDeclaration Until { get; } = Block.Fact("until", Signature.Moment(MomentShape.DateAndClock), "2026-10-04 08:30", "leave no earlier");

    public static FactDeclaration Charger { get; } = Block.Fact(
        "charger",
        Signature.Of(new Slot("power", new QuantityForm([Q.Power])), new Slot("kind", new ChoiceForm(["ac", "dc"]))),
        "150 kW dc", "the post's power", Need.ForResults);

    public static FactDeclaration ChargerCurrent { get; } = Block.Fact("charger-current", Q.Current, "400 A", "limit of the post", plausible: (5, 1500), positive: true);

    public static FactDeclaration OtherCharger { get; } = Block.Fact(
        "other-charger",
        Signature.Of(
            new Slot("power", new QuantityForm([Q.Power])),
            new Slot("kind", new ChoiceForm(["ac", "dc"])),
            new Slot("current", new QuantityForm([Q.Current]), "current", IsOptional: true),
            new Slot("uncouple", new QuantityForm([Q.Time]), "uncouple", IsOptional: true)),
        "50 kW dc current 125 A uncouple 0 min", "another post there; a plan takes the one that is done earlier, nothing else reads it", otherwise: "none", key: ["power", "kind"]);

    public static FactDeclaration Open { get; } = Block.Fact(
        "open", Signature.Hours, "06:00 to 22:00", "when charging and refuelling is possible, every day, by the place's clock", otherwise: "day and night");

    public static FactDeclaration ChargeTo { get; } = Block.Fact("charge-to", Q.Ratio, "80 %", "unplug at this charge", Need.ForResults, plausible: (0.05, 1), positive: true).Stepped(0.1, 0.1);

    public static FactDeclaration Connect { get; } = Block.Fact(
        "connect", Q.Time, "6 min", "park, plug in, pay, leave", Need.ForResults, Estimate.Constant(300, "5 min", "our choice"), plausible: (0, 7200));

    public static FactDeclaration Uncouple { get; } = Block.Fact("uncouple", Q.Time, "12 min", "trailer off and on again", otherwise: "0", plausible: (0, 7200));

    public static FactDeclaration RefuelTo { get; } = Block.Fact("refuel-to", Signature.Quantity(Q.Ratio, Q.Volume), "100 %", "what is in the tank afterwards", otherwise: "no");

    public static FactDeclaration Price { get; } = Block.Fact(
        "price", Signature.Quantity(Q.MoneyPerEnergy, Q.MoneyPerVolume), "0.62 AUD/kWh", "of energy or fuel; currencies are never converted", otherwise: "no cost shown");

    public static FactDeclaration LocalTime { get; } = Block.Fact(
        "local-time", Signature.Moment(MomentShape.Offset), "+09:30", "the clock from here on", otherwise: "unchanged");
}

using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What is said of a trip.</summary>
public static class TripFacts
{
    public static BlockDeclaration Block { get; } = BlockDeclaration.Root(DeclarationKind.Trip, "a drive in legs, with stops between");

    public static FactDeclaration Rig { get; } = Block.Fact("rig", Signature.Reference(DeclarationKind.Rig), "coast", "which rig drives", Need.ForVerdict);

    public static FactDeclaration Depart { get; } = Block.Fact(
        "depart", Signature.Moment(MomentShape.DateAndClock), "2026-10-03 08:15 +10:00", "when the first leg begins", Need.ForResults, otherwise: "durations only");

    public static FactDeclaration Start { get; } = Block.Fact("start", PlaceSignature(), "home \"Home\"", "the first place", Need.ForVerdict);

    public static FactDeclaration StartCharge { get; } = Block.Fact(
        "start-charge", Q.Ratio, "95 % ± 1 %", "what the display says at the start", Need.ForResults, plausible: (0.02, 1), positive: true, aliases: ["start-soc"]).Stepped(0.05, 0.05);

    public static FactDeclaration StartFuel { get; } = Block.Fact(
        "start-fuel", Signature.Quantity(Q.Ratio, Q.Volume), "24 L", "what is in the tank at the start", Need.ForResults, positive: true);

    public static FactDeclaration Reserve { get; } = Block.Fact(
        "reserve", Signature.Quantity(Q.Ratio, Q.Volume, Q.Distance), "12 %", "least that must be left at any place", Need.ForResults);

    public static FactDeclaration ArriveWith { get; } = Block.Fact(
        "arrive-with", Q.Ratio, "30 %", "least that must be left at the last place", otherwise: "the reserve", plausible: (0, 1));

    public static FactDeclaration ArriveBy { get; } = Block.Fact(
        "arrive-by", Signature.Moment(MomentShape.DateAndClock), "2026-10-04 17:00", "a wish, warned about");

    public static FactDeclaration DrivingLimit { get; } = Block.Fact(
        "driving-limit", Q.Time, "6 h", "most driving in a day", plausible: (600, 86_400), positive: true);

    public static FactDeclaration DrivingHours { get; } = Block.Fact(
        "driving-hours", Signature.Hours, "07:30 to 19:00", "no leg begins before or ends after, by the clock in force; a plan stays until the next day", otherwise: "any time");

    public static FactDeclaration ComfortSpeed { get; } = Block.Fact(
        "comfort-speed", Q.Speed, "95 km/h", "the fastest that you like to drive; a plan chooses no more", otherwise: "the `speed` of the leg or the rig", plausible: (8, 45), positive: true);

    public static FactDeclaration Leg { get; } = Block.Fact(
        "leg", PlaceSignature(), "quarry \"Quarry services\"", "a drive to the place named", Need.ForVerdict, key: ["place"]);

    public static FactDeclaration Stop { get; } = Block.Fact(
        "stop", Signature.Of(new Slot("place", new LocalNameForm(LocalNames.Leg))), "quarry", "what is done there; right behind the leg, repeating its name",
        otherwise: "no stop", key: ["place"]);

    private static Signature PlaceSignature() => Signature.Of(
        new Slot("place", new NameForm()),
        new Slot("title", new TextForm(), IsOptional: true));
}

using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>What a leg of a trip and a logged run say alike: the way and the weather.</summary>
public sealed class JourneyFacts
{
    internal JourneyFacts(BlockDeclaration block)
    {
        Distance = block.Fact("distance", Q.Distance, "112 km", "along the road", Need.ForResults, otherwise: "the sections' sum, or the track's length", plausible: (100, 3e6), positive: true);
        Speed = block.Fact("speed", Q.Speed, "85 km/h", "wished steady speed", Need.ForResults, otherwise: "the rig's speed", plausible: (3, 45), positive: true)
            .Stepped(5 / 3.6, 5 * 0.44704);
        Climb = block.Fact("climb", Q.Height, "420 m", "sum of all climbs", Need.ForResults, otherwise: "from sections or track", plausible: (0, 15_000), aliases: ["ascent"]);
        Descent = block.Fact("descent", Q.Height, "250 m", "sum of all descents", Need.ForResults, otherwise: "from sections or track", plausible: (0, 15_000));
        Section = block.Fact(
            "section",
            Signature.Of(
                new Slot("length", new QuantityForm([Q.Distance])),
                new Slot("grade", new QuantityForm([Q.Slope]), "at"),
                new Slot("speed", new QuantityForm([Q.Speed]), "speed", IsOptional: true)),
            "14 km at 6.5 % speed 60 km/h", "a stretch with one grade, in order; their sum is the distance", repeats: true);
        Gpx = block.Fact("gpx", Signature.Of(new Slot(Signature.ValueRole, new PathForm(".gpx"))), "\"tracks/saddle.gpx\"", "a recorded or planned track");
        Altitude = block.Fact(
            "altitude", Q.Height, "320 m", "above the sea where it begins", Need.ForResults, otherwise: "the track's first height, the end of the leg before, else 0 m, marked", plausible: (-450, 5500));
        Air = block.Fact(
            "air", Q.Temperature, "14 °C", "air temperature", Need.ForResults, otherwise: "15 °C less 6.5 K for each kilometre up, marked", plausible: (233, 328), aliases: ["temperature"]);
        Humidity = block.Fact(
            "humidity", Q.Ratio, "60 %", "relative humidity of the air", otherwise: "dry air, some 1 % denser at 25 °C", plausible: (0.02, 1));
        Wind = block.Fact(
            "wind",
            Signature.Of(
                new Slot("speed", new QuantityForm([Q.Speed])),
                new Slot("side", new ChoiceForm(["head", "tail", "left", "right"]), IsOptional: true),
                new Slot("from", new QuantityForm([Q.Angle]), "from", IsOptional: true)),
            "12 km/h from 225°", "at road height: `head`, `tail`, `left`, `right`, or `from` a bearing", otherwise: "calm ± 15 km/h along the road, marked");
        Heading = block.Fact("heading", Q.Angle, "310°", "course of the road, for `wind … from`", Need.ForResults, otherwise: "from the track", plausible: (0, 6.2832), aliases: ["course", "bearing"]);
        Surface = block.Fact("surface", Signature.Choice("asphalt", "gravel", "grass"), "gravel", "the road", otherwise: "the rig's");
    }

    public FactDeclaration Distance { get; }

    public FactDeclaration Speed { get; }

    public FactDeclaration Climb { get; }

    public FactDeclaration Descent { get; }

    public FactDeclaration Section { get; }

    public FactDeclaration Gpx { get; }

    public FactDeclaration Altitude { get; }

    public FactDeclaration Air { get; }

    public FactDeclaration Humidity { get; }

    public FactDeclaration Wind { get; }

    public FactDeclaration Heading { get; }

    public FactDeclaration Surface { get; }
}

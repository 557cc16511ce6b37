using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Air and wind along a way, from what the leg says; what it doesn't say is a standard day, calm, and marked as a stand-in.</summary>
internal sealed class Weather
{
    private const double LapseRate = 0.0065;
    private const double SeaLevel = 288.15;

    private readonly double temperature;
    private readonly double start;
    private readonly (double Speed, string? Side, double? From) wind;

    private readonly double humidity;

    private Weather(double temperature, double humidity, double start, (double Speed, string? Side, double? From) wind)
    {
        this.temperature = temperature;
        this.humidity = humidity;
        this.start = start;
        this.wind = wind;
    }

    /// <param name="read">Notes the reads.</param>
    /// <param name="block">The leg or run.</param>
    /// <param name="facts">Its facts.</param>
    /// <param name="start">Altitude for which its air temperature is said, m.</param>
    public static Weather Of(Reader read, Block block, JourneyFacts facts, double start)
    {
        var temperature = read.QuantityIfKnown(block, facts.Air);
        if (temperature is null)
        {
            read.StandIn(block, facts.Air);
        }

        return new Weather(temperature ?? SeaLevel - (LapseRate * start), read.QuantityIfKnown(block, facts.Humidity) ?? 0, start, WindOf(read, block, facts));
    }

    /// <summary>K, falling 6.5 K for each kilometre above the start.</summary>
    public double TemperatureAt(double altitude) => temperature - (LapseRate * (altitude - start));

    /// <summary>kg/m³ by the altitude's standard pressure and this temperature; dry where no line tells the humidity.</summary>
    public double DensityAt(double altitude)
    {
        // Colder than the formula for vapour goes, air holds next to none.
        if (humidity > 0 && MoistAir.DensityAt(altitude, TemperatureAt(altitude), Math.Min(1, humidity)) is var moist && !double.IsNaN(moist))
        {
            return moist;
        }

        var standard = Atmosphere.AtGeometric(altitude);
        return standard.Density * standard.Temperature / TemperatureAt(altitude);
    }

    /// <summary>Wind over a road that goes in a direction, rad from north; that of a bearing is NaN where the direction isn't known.</summary>
    public Wind On(double course) => wind switch
    {
        (var speed, "head", _) => new Wind(speed, 0),
        (var speed, "tail", _) => new Wind(-speed, 0),
        (var speed, "left", _) => new Wind(0, -speed),
        (var speed, "right", _) => new Wind(0, speed),
        (var speed, _, { } from) => Wind.OnCourse(speed, from, course),
        (var speed, _, _) => new Wind(speed, 0),
    };

    private static (double, string?, double?) WindOf(Reader read, Block block, JourneyFacts facts)
    {
        if (read.LineIfWritten(block, facts.Wind) is not { } line)
        {
            // Calm, and how far from calm it may be.
            read.StandIn(block, facts.Wind);
            read.Figure(FigureFacts.WindSpread);
            return (0, "head", null);
        }

        var (side, from) = (line.WordOf("side"), line.MeasureOf("from")?.Value);
        if (side is null && from is null)
        {
            // A speed without a direction: the worst is counted.
            read.StandIn(block, facts.Wind);
        }
        else if (side is null && (block.Find(facts.Gpx) is null || !block.All(facts.Section).IsEmpty))
        {
            read.Quantity(block, facts.Heading);
        }

        return (line.MeasureOf("speed")!.Value, side, from);
    }
}

using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Runs;

/// <summary>What the model says of a logged drive. It was driven, so power is not asked for: every stretch has the speed that was logged.</summary>
internal static class DrivenRun
{
    /// <summary>As written, the track's first height, else the sea, marked. m.</summary>
    public static Computation<RunStudy, double> StartAltitude { get; } = new("altitude where the run begins", (read, run) =>
    {
        if (read.QuantityIfKnown(run.Block, RunFacts.Journey.Altitude) is { } written)
        {
            return written;
        }

        if (WayOf(run).StartOfTrack is { } track)
        {
            read.LineIfWritten(run.Block, RunFacts.Journey.Gpx);
            return track;
        }

        read.StandIn(run.Block, RunFacts.Journey.Altitude);
        return 0;
    });

    /// <summary>As written, or the distance over the moving time, m/s.</summary>
    public static Computation<RunStudy, double> Speed { get; } = new("speed of the run", (read, run) =>
        read.QuantityIfKnown(run.Block, RunFacts.Journey.Speed)
        ?? (read.QuantityIfKnown(run.Block, RunFacts.MovingTime) is { } time ? WayOf(run).Distance(read) / time : read.Quantity(run.Block, RunFacts.Journey.Speed)));

    public static Computation<RunStudy, ImmutableArray<RouteSegment>> Stretches { get; } = new("stretches of the run", (read, run) =>
    {
        var start = read.Get(StartAltitude, run);
        var weather = WeatherOf(read, run);
        var speed = read.Get(Speed, run);
        return
        [
            .. WayOf(run).Pieces(read, start)
                .Select(piece => new RouteSegment(piece.Length, piece.Grade, piece.Wish ?? speed, weather.DensityAt(piece.Altitude), weather.On(piece.Course))),
        ];
    });

    public static Computation<RunStudy, RoadLoad> Load { get; } = new("road load on the run", (read, run) =>
    {
        var whole = read.Get(RoadLoads.Whole, run.Rig);
        return read.WordIfKnown(run.Block, RunFacts.Journey.Surface) is { } surface ? whole with { Rolling = RoadLoads.On(read, run.Rig, surface) } : whole;
    });

    /// <summary>Out of the battery by the model, J.</summary>
    public static Computation<RunStudy, double> Battery { get; } = new("battery energy of the run", (read, run) =>
        Drives.BatteryIn(read, run.Rig, Temperature(read, run)).Over(read.Get(Load, run), read.Get(Stretches, run)).Battery);

    /// <summary>Out of the tank by the model, m³.</summary>
    public static Computation<RunStudy, double> Fuel { get; } = new("fuel of the run", (read, run) =>
        read.Get(Drives.Combustion, run.Rig) is { } drive
            ? drive.Over(read.Get(Load, run), read.Get(Stretches, run)).Volume(Drives.FuelOf(read, run.Rig))
            : double.NaN);

    /// <summary>Of the air half way up, K.</summary>
    public static double Temperature(Reader read, RunStudy run) => WeatherOf(read, run).TemperatureAt(MeanAltitude(read, run));

    /// <summary>Of the air half way up, kg/m³.</summary>
    public static double Density(Reader read, RunStudy run) => WeatherOf(read, run).DensityAt(MeanAltitude(read, run));

    /// <summary>Wind over a road in the direction that the run says.</summary>
    public static Wind WindOn(Reader read, RunStudy run) => WeatherOf(read, run).On(read.QuantityIfKnown(run.Block, RunFacts.Journey.Heading) ?? double.NaN);

    /// <summary>Standard deviation of the wind along the road, m/s: as written, by its digits, or that of a wind nobody noted.</summary>
    public static double WindDoubt(Reader read, RunStudy run) =>
        (read.LineIfWritten(run.Block, RunFacts.Journey.Wind)?.MeasureOf("speed") is { } wind ? FittedDrive.HalfWidth(wind) : read.Figure(FigureFacts.WindSpread)) / 2;

    /// <summary>What the run's surface, or the rig's, adds to the rolling coefficient on asphalt; an estimate, and marked.</summary>
    public static double SurfaceAdds(Reader read, RunStudy run)
    {
        var adds = RoadLoads.Adds(read.WordIfKnown(run.Block, RunFacts.Journey.Surface) ?? read.WordIfKnown(run.Rig.Rig, RigFacts.Surface));
        if (adds > 0)
        {
            read.StandIn(run.Rig.Rig, RigFacts.Rolling);
        }

        return adds;
    }

    public static Way WayOf(RunStudy run) => new(run.Block, RunFacts.Journey, run.Track);

    private static double MeanAltitude(Reader read, RunStudy run) => read.Get(StartAltitude, run) + (WayOf(run).NetRise(read) / 2);

    private static Weather WeatherOf(Reader read, RunStudy run) => Weather.Of(read, run.Block, RunFacts.Journey, read.Get(StartAltitude, run));
}

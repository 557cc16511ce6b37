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
    {
        var start = read.Get(StartAltitude, run);
        var temperature = WeatherOf(read, run).TemperatureAt(start + (WayOf(run).NetRise(read) / 2));
        return Drives.BatteryIn(read, run.Rig, temperature).Over(read.Get(Load, run), read.Get(Stretches, run)).Battery;
    });

    /// <summary>Out of the tank by the model, m³.</summary>
    public static Computation<RunStudy, double> Fuel { get; } = new("fuel of the run", (read, run) =>
        read.Get(Drives.Combustion, run.Rig) is { } drive
            ? drive.Over(read.Get(Load, run), read.Get(Stretches, run)).Volume(Drives.FuelOf(read, run.Rig))
            : double.NaN);

    public static Way WayOf(RunStudy run) => new(run.Block, RunFacts.Journey, run.Track);

    private static Weather WeatherOf(Reader read, RunStudy run) => Weather.Of(read, run.Block, RunFacts.Journey, read.Get(StartAltitude, run));
}

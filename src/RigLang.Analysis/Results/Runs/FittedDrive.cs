using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Runs;

/// <summary>A logged drive as the fit reads it.</summary>
/// <param name="Model">What the rig takes on this drive for a rolling coefficient on asphalt and a drag area (m²): J out of the battery, or m³ of fuel.</param>
/// <param name="WithWind">The same with as much more wind against the drive as is two thirds likely to have been missed.</param>
/// <param name="Used">What was logged, in the same unit.</param>
/// <param name="UsedError">Its standard deviation.</param>
/// <param name="Speed">m/s.</param>
internal sealed record FittedDrive(Func<double, double, double> Model, Func<double, double, double> WithWind, double Used, double UsedError, double Speed)
{
    /// <summary>For a fit whose answer lies near the two figures.</summary>
    public LoggedDrive Near(double rolling, double dragArea)
    {
        var wind = WithWind(rolling, dragArea) - Model(rolling, dragArea);
        return new LoggedDrive(Model, Used, Math.Sqrt((UsedError * UsedError) + (wind * wind)));
    }

    /// <summary>Doesn't apply to a run that is a coast-down alone.</summary>
    public static Computation<RunStudy, FittedDrive?> Of { get; } = new("drive as the fit reads it", (read, run) =>
    {
        if (!RunResults.IsLogged(run))
        {
            read.NotApplicable();
            return null;
        }

        var stretches = read.Get(DrivenRun.Stretches, run);
        var mass = read.Get(TrainMass.Whole, run.Rig);
        var adds = DrivenRun.SurfaceAdds(read, run);
        var missed = DrivenRun.WindDoubt(read, run);
        if (read.HasMissing)
        {
            return null;
        }

        RouteSegment[] calm = [.. stretches], windy = [.. stretches.Select(stretch => stretch with { Wind = stretch.Wind with { Head = stretch.Wind.Head + missed } })];
        var take = Takes(read, run);
        // At a steady speed turning parts count for nothing.
        double Over(IReadOnlyList<RouteSegment> way, double rolling, double drag) => take(new RoadLoad(mass, new Rolling(rolling + adds), drag, double.NaN), way);
        var (used, error) = Logged(read, run);
        return new FittedDrive((rolling, drag) => Over(calm, rolling, drag), (rolling, drag) => Over(windy, rolling, drag), used, error, read.Get(DrivenRun.Speed, run));
    });

    private static Func<RoadLoad, IReadOnlyList<RouteSegment>, double> Takes(Reader read, RunStudy run)
    {
        if (Drives.Battery(run.Rig) is not null)
        {
            var battery = Drives.BatteryIn(read, run.Rig, DrivenRun.Temperature(read, run));
            return (load, way) => battery.Over(load, way).Battery;
        }

        var (engine, fuel) = (read.Get(Drives.Combustion, run.Rig), Drives.FuelOf(read, run.Rig));
        return (load, way) => engine?.Over(load, way).Volume(fuel) ?? double.NaN;
    }

    /// <summary>What was used, and how sure that is: as written, else by the digits. A half-width is two standard deviations.</summary>
    private static (double Used, double Error) Logged(Reader read, RunStudy run)
    {
        var used = read.Get(Drives.Battery(run.Rig) is not null ? RunResults.EnergyUsed : RunResults.FuelUsed, run);
        if (run.Block.Find(RunFacts.Used)?.MeasureOf(Signature.ValueRole) is { } written)
        {
            return (used, HalfWidth(written) / 2);
        }

        var display = new[] { RunFacts.ChargeBefore, RunFacts.ChargeAfter }.Select(fact => run.Block.Find(fact)?.MeasureOf(Signature.ValueRole)).OfType<Measure>()
            .Sum(charge => HalfWidth(charge) * HalfWidth(charge));
        return (used, Math.Sqrt(display) / 2 * Drives.UsableEnergy(read, run.Rig));
    }

    /// <summary>As written, or half of the last digit.</summary>
    internal static double HalfWidth(Measure measure) =>
        measure.HalfWidth > 0 ? measure.HalfWidth : measure.Unit.HalfWidthToSi(0.5 * Math.Pow(10, -measure.Decimals), measure.Value);
}

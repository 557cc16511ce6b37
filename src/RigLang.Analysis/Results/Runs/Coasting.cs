using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Runs;

/// <summary>A run's <c>coast</c> lines: the rig rolling out in neutral, and what that says of rolling and air.</summary>
internal static class Coasting
{
    private const string NoCoastDown = "the `coast` lines are no coast-down that rolling and air make: times must rise, speeds fall, and fall faster where they are high; three lines at least";

    /// <summary>The rolling coefficient on asphalt and the drag area with their doubt, of the points and of the wind. Doesn't apply without <c>coast</c> lines.</summary>
    public static Computation<RunStudy, RoadLoadReading> Reading { get; } = new("coast-down", (read, run) =>
    {
        if (run.Block.All(RunFacts.Coast).IsEmpty)
        {
            read.NotApplicable();
            return default;
        }

        var table = Table(read, run);
        var (mass, rotating) = (read.Get(TrainMass.Whole, run.Rig), read.Quantity(run.Rig.Vehicle, VehicleFacts.RotatingMass));
        var (grade, density, adds) = (Grade(read, run), DrivenRun.Density(read, run), DrivenRun.SurfaceAdds(read, run));
        var wind = DrivenRun.WindOn(read, run);
        var missed = DrivenRun.WindDoubt(read, run);
        if (read.HasMissing)
        {
            return default;
        }

        CoastDownFit In(double headWind) => CoastDownFit.Of(table.Times, [.. table.Speeds.Select(speed => speed + headWind)], mass, rotating, grade, table.Error);
        (double Rolling, double Drag) Of(CoastDownFit fit) => (RollingOf(fit.Curve.Constant, mass, grade) - adds, 2 * fit.Curve.Square / density);
        // Against the air the rig moves at speed and head wind together, and slows as it does over the road: the same table with other speeds.
        var here = In(wind.Head);
        var (rolling, drag) = Of(here);
        if (!(rolling > 0) || !(drag > 0))
        {
            read.Refuse(NoCoastDown);
            return default;
        }

        var (more, less) = (Of(In(wind.Head + missed)), Of(In(wind.Head - missed)));
        var (byWind, alsoByWind) = ((more.Rolling - less.Rolling) / 2, (more.Drag - less.Drag) / 2);
        var (ofRolling, ofDrag) = (RollingOf(here.ConstantError, mass, grade), 2 * here.SquareError / density);
        return new RoadLoadReading(
            rolling, drag, (ofRolling * ofRolling) + (byWind * byWind), (ofDrag * ofDrag) + (alsoByWind * alsoByWind), (here.Correlation * ofRolling * ofDrag) + (byWind * alsoByWind));
    });

    private static double RollingOf(double force, double mass, double grade) => force / (mass * Constants.Gravity * Slope.Cosine(grade));

    private static (double[] Times, double[] Speeds, double Error) Table(Reader read, RunStudy run)
    {
        var lines = read.Lines(run.Block, RunFacts.Coast);
        var speeds = lines.Select(line => line.MeasureOf("speed")!).ToList();
        var error = Math.Sqrt(speeds.Select(FittedDrive.HalfWidth).Select(half => half * half / 4).DefaultIfEmpty(double.NaN).Average());
        return ([.. lines.Select(line => line.MeasureOf("time")!.Value)], [.. speeds.Select(speed => speed.Value)], error);
    }

    /// <summary>Of the road that it rolled out on; one that neither climbs nor falls needs no length.</summary>
    private static double Grade(Reader read, RunStudy run)
    {
        var way = DrivenRun.WayOf(run);
        var rise = way.NetRise(read);
        if (rise == 0 || double.IsNaN(rise))
        {
            return rise;
        }

        var length = way.Distance(read);
        return rise / Math.Sqrt((length * length) - (rise * rise));
    }
}

using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Power;

/// <summary>How the whole gains speed on a level road, and what SAE J2807 is remembered to ask of that.</summary>
public static class AccelerationResults
{
    private const string Sum = "mass and turning parts × change of speed ÷ the force left over rolling and air, summed; force by torque and gears, no more than the driven wheels hold; no time for shifting, no slipping clutch: real starts take longer";

    private const string Recalled = "SAE J2807 as recalled, value from memory: information, no verdict";

    /// <summary>60 mph and 100 km/h are below it.</summary>
    private const double Top = 100 / 3.6;

    private const double MilesPerHour = 1609.344 / 3600;

    /// <summary>Outside air of the recalled climb, K: 37.8 °C, 100 °F.</summary>
    private const double HotAir = 310.93;

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultSet<RigStudy> RecalledSet { get; } = new(ResultScope.Rig);

    private static Computation<RigStudy, RunUp?> RunUp { get; } = new("gain of speed", (read, rig) =>
    {
        var load = read.Get(RoadLoads.Whole, rig) with { RotatingShare = read.Quantity(rig.Vehicle, VehicleFacts.RotatingMass) };
        return read.Get(PullingDrives.ByTorque, rig) is { } drive ? new RunUp(load, drive, Top, Drives.StandardAir.Density, read.Get(DrivenWheels.Grip, rig)) : null;
    });

    public static ResultDeclaration<RigStudy> TimeTo50 { get; } = Set.Add(
        "time-to-50", QuantityKinds.Time, "From rest to 50 km/h", "at full power on a level road, the combination as loaded; not shown where it isn't reached", "sum of mass × Δspeed ÷ force left", Sum,
        (read, rig) => Time(read, rig, 0, 50 / 3.6));

    public static ResultDeclaration<RigStudy> TimeTo80 { get; } = Set.Add(
        "time-to-80", QuantityKinds.Time, "From rest to 80 km/h", "at full power on a level road, the combination as loaded; not shown where it isn't reached", "sum of mass × Δspeed ÷ force left", Sum,
        (read, rig) => Time(read, rig, 0, 80 / 3.6));

    public static ResultDeclaration<RigStudy> TimeTo100 { get; } = Set.Add(
        "time-to-100", QuantityKinds.Time, "From rest to 100 km/h", "at full power on a level road, the combination as loaded; not shown where it isn't reached", "sum of mass × Δspeed ÷ force left", Sum,
        (read, rig) => Time(read, rig, 0, 100 / 3.6));

    public static ResultDeclaration<RigStudy> TimeTo30Mph { get; } = Recall("time-to-30-mph", "From rest to 30 mph", 0);

    public static ResultDeclaration<RigStudy> TimeTo60Mph { get; } = Recall("time-to-60-mph", "From rest to 60 mph", 1);

    public static ResultDeclaration<RigStudy> Time40To60Mph { get; } = Recall("time-40-to-60-mph", "From 40 to 60 mph", 2);

    public static ResultDeclaration<RigStudy> LongClimbSpeed { get; } = RecalledSet.Add(
        "long-climb-speed", QuantityKinds.Speed, "Holds on the long climb", "on the mean grade of 3000 ft in 11.4 mi at 100 °F and sea level, calm; the climb itself has stretches of 7 %",
        "as grade-speed, with the engine's power in warm air", Recalled,
        (read, rig) =>
        {
            var density = Drives.StandardAir.Density * Drives.StandardAir.Temperature / HotAir;
            var grade = Slope.FromRise(TowRatingCriteria.ClimbRise, TowRatingCriteria.ClimbLength);
            var share = PullingDrives.ShareIn(read, rig, density);
            return read.Get(PullingDrives.Lasting, rig) is { } drive ? Gradeability.HighestSpeed(read.Get(RoadLoads.Whole, rig), drive.Times(share), grade, density, PowerResults.Highest) : double.NaN;
        },
        (rig, value, _) => $"{Mph(value)} ({Mph(TowRatingCriteria.ClimbSpeed(HasDualWheels(rig)))} asked, from memory)");

    private static ResultDeclaration<RigStudy> Recall(string name, string title, int index) => RecalledSet.Add(
        name, QuantityKinds.Time, title, "at full power on a level road, the combination as loaded, beside what SAE J2807 is remembered to ask; not shown where it isn't reached", "sum of mass × Δspeed ÷ force left", $"{Recalled}; {Sum}",
        (read, rig) => TowRatingCriteria.Accelerations(false)[index] is var asked ? Time(read, rig, asked.From, asked.To) : double.NaN,
        (rig, value, _) => $"{QuantityWriter.WriteDuration(value)} ({QuantityWriter.WriteDuration(TowRatingCriteria.Accelerations(HasDualWheels(rig))[index].Time)} asked, from memory)");

    private static double Time(Reader read, RigStudy rig, double from, double to)
    {
        var time = read.Get(RunUp, rig)?.Time(from, to) ?? double.NaN;
        return double.IsNaN(time) && !read.HasMissing ? read.NotApplicable() : time;
    }

    private static bool HasDualWheels(RigStudy rig) =>
        rig.VehicleAxles.FirstOrDefault(axle => axle.Axle.Key == "rear") is { } rear && rear.Axle.Find(rear.Facts.Wheels)?.MeasureOf(Model.Declaring.Signature.ValueRole)?.Value > 2;

    private static string Mph(double speed) => QuantityWriter.Write(speed / MilesPerHour, QuantityKinds.Count, DisplaySystem.Us) + " mph";
}

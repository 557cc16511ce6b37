using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Power;

/// <summary>What the drive holds on a hill, and on which hill it starts. In calm air; at sea level and 15 °C where nothing else is said.</summary>
public static class PowerResults
{
    /// <summary>Nobody tows faster than this.</summary>
    internal const double Highest = 200 / 3.6;

    internal const string Balance = "force of the drive against rolling, air and grade (textbook road load); what the motors hold for half an hour, an engine at full load in its best gear";

    private const string Start = "axle loads with the grade, the trailer's pull and its ball load (moments); static: no run-up, no wheel that lifts, one friction for all driven tyres";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> SteepestGrade { get; } = Set.Add(
        "steepest-grade", QuantityKinds.Slope, "Holds its speed up to", "the steepest hill on which the drive holds the rig's speed for as long as the hill lasts; below zero it isn't held on the level",
        "force at the wheels − air force = mass × g × (rolling-coefficient × cos θ + sin θ)", Balance,
        (read, rig) =>
        {
            var speed = read.Quantity(rig.Rig, RigFacts.Speed);
            return read.Get(PullingDrives.Lasting, rig) is { } drive
                ? Gradeability.SteepestGrade(read.Get(RoadLoads.Whole, rig), drive.Force(speed), speed, Drives.StandardAir.Density)
                : double.NaN;
        });

    public static ResultDeclaration<RigStudy> GradeSpeed { get; } = Set.Add(
        "grade-speed", QuantityKinds.Speed, "Holds on a long hill", "the speed that the drive holds on a hill of `hill-grade` (6 % where no practice says otherwise) at sea level; 200 km/h is the most that is looked at",
        "the highest speed at which the force at the wheels covers rolling, air and hill-grade", Balance,
        (read, rig) => OnHill(read, rig, 0));

    public static ResultDeclaration<RigStudy> HighGradeSpeed { get; } = Set.Add(
        "high-grade-speed", QuantityKinds.Speed, "The same, high up", "on that hill at `hill-altitude` (2000 m where no practice says otherwise): engines lose power in thin air, motors don't, and thin air holds back less",
        "as grade-speed, with power-left and the air's density there", Balance,
        (read, rig) => OnHill(read, rig, read.Figure(FigureFacts.HillAltitude)));

    public static ResultDeclaration<RigStudy> PowerLeft { get; } = Set.Add(
        "power-left", QuantityKinds.Ratio, "Power left high up", "what thin air leaves of the engine's power at `hill-altitude`, on a standard day; makers differ widely",
        "natural: (density ÷ sea level's − 0.15) ÷ 0.85; turbo: all up to 1500 m, then a third of that loss", "after the form of SAE J1349, value from memory; turbo by common practice",
        (read, rig) => Drives.Engine(rig) is null && Drives.Battery(rig) is not null
            ? read.NotApplicable()
            : PullingDrives.ShareIn(read, rig, Atmosphere.AtGeometric(read.Figure(FigureFacts.HillAltitude)).Density));

    public static ResultDeclaration<RigStudy> TopSpeed { get; } = Set.Add(
        "top-speed", QuantityKinds.Speed, "Power is enough for", "the highest speed that the drive holds on a level road, calm, by power alone: no advice, and far above what the trailer allows. 200 km/h is the most that is looked at",
        "the highest speed at which the force at the wheels covers rolling and air", Balance,
        (read, rig) => read.Get(PullingDrives.Lasting, rig) is { } drive
            ? Gradeability.HighestSpeed(read.Get(RoadLoads.Whole, rig), drive, 0, Drives.StandardAir.Density, Highest)
            : double.NaN);

    public static ResultDeclaration<RigStudy> LaunchGrade { get; } = Set.Add(
        "launch-grade", QuantityKinds.Slope, "Starts on up to", "the steepest hill on which the rig starts, and what sets the limit: grip or pull. Getting going takes some more, on rough ground a lot. SAE J2807 asks for 12 %, as recalled (from memory; information, no verdict)",
        "the lower of launch-grade-grip and launch-grade-pull", Start,
        (read, rig) => Math.Min(read.Get(LaunchGradeGrip!, rig), read.Get(LaunchGradePull!, rig)),
        (rig, value, system) => $"{QuantityWriter.Write(value, QuantityKinds.Slope, system)} by {(LimitedByGrip(rig) ? "grip" : "pull")}");

    public static ResultDeclaration<RigStudy> LaunchGradeGrip { get; } = Set.Add(
        "launch-grade-grip", QuantityKinds.Slope, "Grip is enough up to", "the steepest hill on which the driven wheels hold what a start takes, 100 % at most; on a dry road where no practice says otherwise (`assume friction 0.65` is a wet one)",
        "friction × load of the driven axle on the hill = weight × sin θ + rolling", Start + "; friction by the EU's Joint Research Centre",
        (read, rig) => Starting.ByGrip(read, rig));

    public static ResultDeclaration<RigStudy> LaunchGradePull { get; } = Set.Add(
        "launch-grade-pull", QuantityKinds.Slope, "Pull is enough up to", "the steepest hill on which the drive's torque from rest moves the rig, 100 % at most; an engine pulls with its lowest torque-point, and what a converter adds isn't counted",
        "torque × ratios × efficiency ÷ wheel radius = mass × g × (rolling-coefficient × cos θ + sin θ)", "balance of forces; wheel radius by the tyres' size",
        (read, rig) => Starting.ByPull(read, rig));

    /// <summary>Whether it is the grip that sets the limit for a start, not the pull.</summary>
    public static bool LimitedByGrip(RigStudy rig) => rig.Compute(LaunchGradeGrip, rig).Value < rig.Compute(LaunchGradePull, rig).Value;

    private static double OnHill(Reader read, RigStudy rig, double altitude)
    {
        var grade = read.Figure(FigureFacts.HillGrade);
        var density = Atmosphere.AtGeometric(altitude).Density;
        var share = altitude == 0 ? 1 : PullingDrives.ShareIn(read, rig, density);
        return read.Get(PullingDrives.Lasting, rig) is { } drive
            ? Gradeability.HighestSpeed(read.Get(RoadLoads.Whole, rig), drive.Times(share), grade, density, Highest)
            : double.NaN;
    }
}

using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Power;

/// <summary>The rig about to start on a hill.</summary>
internal static class Starting
{
    /// <summary>As the model of a start by grip reads the rig.</summary>
    public static Computation<RigStudy, Launch?> Rig { get; } = new("rig at the start", (read, rig) =>
    {
        var solo = read.Get(LoadStates.Solo, rig);
        var driven = read.Get(LoadStates.AsDriven, rig);
        var wheelbase = read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase);
        return new Launch
        {
            VehicleMass = solo.Total / Constants.Gravity,
            Wheelbase = wheelbase,
            MassCentre = VehicleStatics.MassCentre(solo, wheelbase),
            MassCentreHeight = read.Get(MassHeights.Vehicle, rig).Height,
            Overhang = rig.HasTrailer ? read.Get(Geometry.Overhang, rig) : 0,
            BallHeight = rig.HasTrailer ? read.Get(Geometry.BallHeight, rig) : 0,
            TrailerMass = rig.HasTrailer ? read.Get(LoadStates.Trailer, rig).Mass : 0,
            BallMass = driven.Ball / Constants.Gravity,
            Couple = driven.Couple,
            Rolling = read.Get(RoadLoads.Rolling, rig).At(0),
            Friction = DrivenWheels.Friction(read, rig),
            Drive = read.Get(DrivenWheels.Axle, rig),
        };
    });

    /// <summary>Steepest grade by grip, rise over run.</summary>
    public static double ByGrip(Reader read, RigStudy rig) => read.Get(Rig, rig)?.SteepestGrade() ?? double.NaN;

    /// <summary>Steepest grade by the pull of the drive from rest, rise over run: at most 1, 0 if the rig doesn't start on the level.</summary>
    public static double ByPull(Reader read, RigStudy rig)
    {
        var pull = read.Get(PullingDrives.FromRest, rig);
        var load = read.Get(RoadLoads.Whole, rig);
        return load.Force(0, Drives.StandardAir.Density, grade: 1) <= pull ? 1 : Math.Max(0, Gradeability.SteepestGrade(load, pull, 0, Drives.StandardAir.Density));
    }
}

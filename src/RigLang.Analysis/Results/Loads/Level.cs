using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Loads;

/// <summary>How the vehicle stands on its springs, against the weighed state in which its heights were taken.</summary>
internal static class Level
{
    public static Computation<RigStudy, Attitude> AsDriven { get; } = new("attitude as driven", (read, rig) =>
    {
        var weighed = read.Get(LoadStates.Weighed, rig);
        var driven = read.Get(LoadStates.AsDriven, rig);
        var front = AxleOf(rig, "front");
        var rear = AxleOf(rig, "rear");
        if (front is null || rear is null)
        {
            read.Need(rig.Vehicle, VehicleFacts.Axle);
            return default;
        }

        var facts = AxleFacts.Vehicle;
        var levels = read.WordIfKnown(rear.Axle, facts.Levelling) == "yes";
        return Attitude.FromLoads(
            new AxleLoads(driven.Front - weighed.Front, driven.Rear - weighed.Rear),
            read.Quantity(front.Axle, facts.RideRate),
            levels ? 1 : read.Quantity(rear.Axle, facts.RideRate),
            read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase),
            read.Get(Geometry.Overhang, rig),
            levels);
    });

    /// <summary>Road to ball as driven, m.</summary>
    public static Computation<RigStudy, double> BallHeight { get; } = new("height of the ball, as driven", (read, rig) =>
        read.Get(Geometry.BallHeight, rig) - read.Get(AsDriven, rig).BallDrop);

    /// <summary>How much higher the coupling is carried than where the trailer stands level, m.</summary>
    public static Computation<RigStudy, double> BallRise { get; } = new("coupling above level", (read, rig) =>
        read.Get(BallHeight, rig) - read.Quantity(rig.Trailer, TrailerFacts.CouplingHeight));

    private static AxleSubject? AxleOf(RigStudy rig, string name) => rig.VehicleAxles.FirstOrDefault(axle => axle.Axle.Key == name);
}

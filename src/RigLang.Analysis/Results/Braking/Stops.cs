using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Braking;

/// <summary>The rig at full braking, and parked.</summary>
internal static class Stops
{
    /// <summary>As driven, on the road whose grip the practice says.</summary>
    public static Computation<RigStudy, RigStop> AsDriven { get; } = new("full braking", (read, rig) => Of(read, rig, read.Figure(FigureFacts.Friction), TrailerRatio(read, rig)));

    /// <summary>The same with the trailer's brakes not working.</summary>
    public static Computation<RigStudy, RigStop> WithoutTrailerBrakes { get; } = new("full braking, trailer's brakes not working", (read, rig) =>
        Of(read, rig, read.Figure(FigureFacts.Friction), 0));

    /// <summary>As driven, on dry road whatever the practice says: what rules are made for.</summary>
    public static Computation<RigStudy, RigStop> OnDryRoad { get; } = new("full braking on dry road", (read, rig) => Of(read, rig, DryRoad, TrailerRatio(read, rig)));

    /// <summary>Grip of a dry road. Source: defaults of the EU's Joint Research Centre.</summary>
    public const double DryRoad = 0.85;

    /// <summary>Whether the trailer brakes at all; null where no line says.</summary>
    public static bool? IsTrailerBraked(Reader read, RigStudy rig) => read.WordIfKnown(rig.Trailer, TrailerFacts.Brakes) is { } brakes ? brakes != "none" : null;

    /// <summary>How its brakes follow the push; null where the driver works them.</summary>
    public static OverrunBrake? Overrun(Reader read, RigStudy rig) =>
        rig.HasTrailer && read.WordIfKnown(rig.Trailer, TrailerFacts.Brakes) == "overrun" ? OverrunBrake.ByRegulation : null;

    /// <summary>Brake force over the load on the trailer's wheels.</summary>
    public static double TrailerRatio(Reader read, RigStudy rig) =>
        !rig.HasTrailer || read.WordIfKnown(rig.Trailer, TrailerFacts.Brakes) == "none" ? 0 : read.Quantity(rig.Trailer, TrailerFacts.BrakeRatio);

    /// <summary>Steepest slope on which the rig stands parked, rise over run: by what its parking brakes are built to hold, and by the grip of the wheels they hold.</summary>
    public static Computation<RigStudy, double> ParkingGrade { get; } = new("slope to park on", (read, rig) =>
    {
        var loads = read.Get(LoadStates.AsDriven, rig);
        var parksItself = rig.HasTrailer && read.WordIfKnown(rig.Trailer, TrailerFacts.ParkingBrake) == "yes";
        var force = RigBraking.Holding(read.Quantity(rig.Vehicle, VehicleFacts.GrossRating), RigBraking.VehicleParkingGrade);
        if (parksItself)
        {
            force += RigBraking.Holding(read.Quantity(rig.Trailer, TrailerFacts.GrossRating), RigBraking.TrailerParkingGrade);
        }

        var mass = loads.Total / Constants.Gravity;
        var held = HeldLoad(read, rig, loads) + (parksItself ? loads.TrailerAxles : 0);
        return Math.Min(RigBraking.HeldGrade(force, mass), RigBraking.HoldingGrade(held, mass, read.Figure(FigureFacts.Friction)));
    });

    private static double HeldLoad(Reader read, RigStudy rig, CoupledLoads loads)
    {
        var axle = read.WordIfKnown(rig.Vehicle, VehicleFacts.ParkingAxle);
        if (axle is null)
        {
            read.StandIn(rig.Vehicle, VehicleFacts.ParkingAxle);
        }

        return axle switch { "front" => loads.Front, "all" => loads.Vehicle, _ => loads.Rear };
    }

    private static RigStop Of(Reader read, RigStudy rig, double friction, double ratio)
    {
        var loads = read.Get(LoadStates.AsDriven, rig);
        var trailer = rig.HasTrailer ? read.Get(LoadStates.Trailer, rig).Mass : 0;
        return RigBraking.OnWheels(loads.Vehicle, loads.TrailerAxles, trailer, friction, ratio, ratio > 0 ? Overrun(read, rig) : null);
    }
}

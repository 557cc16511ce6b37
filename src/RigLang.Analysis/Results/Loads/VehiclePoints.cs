using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Loads;

/// <summary>Where the named points of a vehicle are, in metres behind the front axle.</summary>
internal static class VehiclePoints
{
    public static IReadOnlyList<string> Names { get; } = ["front-axle", "rear-axle", "ball", "pin"];

    public static double Of(Reader read, RigStudy rig, PositionValue position) => Named(read, rig, position.Point) + position.Offset;

    /// <summary>NaN for a name that no point has; that is reported by a check of its own.</summary>
    private static double Named(Reader read, RigStudy rig, string name) => name switch
    {
        "front-axle" => 0,
        "rear-axle" => read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase),
        "ball" => read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase) + read.Get(Geometry.Overhang, rig),
        "pin" => read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase) + read.Quantity(rig.Vehicle, VehicleFacts.PinOverhang),
        _ => double.NaN,
    };
}

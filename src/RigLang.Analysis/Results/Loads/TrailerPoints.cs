using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Loads;

/// <summary>Where the named points of a trailer are, in metres behind the ball.</summary>
internal static class TrailerPoints
{
    /// <summary>The fixed ones; an axle's own name is a point too.</summary>
    public static IReadOnlyList<string> Names { get; } = ["coupling", "body", "axle"];

    public static double Of(Reader read, RigStudy rig, PositionValue position) => Named(read, rig, position.Point) + position.Offset;

    private static double Named(Reader read, RigStudy rig, string name) => name switch
    {
        "coupling" => 0,
        "body" => read.Quantity(rig.Trailer, TrailerFacts.CouplingToBody),
        "axle" => read.Get(Geometry.CouplingToAxle, rig),
        _ => rig.TrailerAxles.FirstOrDefault(axle => axle.Axle.Key == name) is { } axle ? read.Get(Geometry.AxleBehindCoupling, axle) : double.NaN,
    };
}

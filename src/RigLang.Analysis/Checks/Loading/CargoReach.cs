using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>Where things can lie at all along a vehicle or trailer, drawn wide (our choice): outside it a distance is a slip.</summary>
internal static class CargoReach
{
    private const double Nose = 1.5, Tail = 1.0, LongestTail = 2.5;

    /// <summary>Metres behind the front axle; null while the wheelbase isn't known.</summary>
    public static (double Front, double Rear)? OfVehicle(RigStudy rig) =>
        Known(rig.Vehicle, VehicleFacts.Wheelbase) is { } wheelbase
            ? (-Nose, wheelbase + Math.Max(LongestTail, (Known(rig.Vehicle, VehicleFacts.Overhang) ?? Known(rig.Vehicle, VehicleFacts.PinOverhang) ?? 0) + Tail))
            : null;

    /// <summary>Metres behind the ball; null while neither the length nor the axle is known.</summary>
    public static (double Front, double Rear)? OfTrailer(RigStudy rig)
    {
        var axle = rig.Compute(Geometry.CouplingToAxle, rig);
        var end = Known(rig.Trailer, TrailerFacts.Length) ?? (axle.IsComputed ? 2 * axle.Value : null as double?);
        return end is { } rear ? (-Tail, rear + Tail) : null;
    }

    private static double? Known(Block block, FactDeclaration fact) => block.Find(fact)?.MeasureOf(Signature.ValueRole)?.Value;
}

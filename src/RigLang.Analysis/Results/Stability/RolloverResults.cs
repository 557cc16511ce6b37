using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Stability;

/// <summary>When vehicle and trailer tip in a curve, each by itself and with its load.</summary>
public static class RolloverResults
{
    private const string Rigid = "quasi-static, each body by itself with no help through the ball; static stability factor as NHTSA uses it (docket NHTSA-2000-8298)";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> VehicleHeight { get; } = Set.Add(
        "vehicle-centre-height", QuantityKinds.Length, "Vehicle's mass centre", "above the road, as loaded; items without `high` leave it where it was",
        "cg-height, with the items of the loads at their heights; on the roof at the vehicle's height", "sum of moments",
        (read, rig) => read.Get(MassHeights.Vehicle, rig).Height);

    public static ResultDeclaration<RigStudy> VehicleFactor { get; } = Set.Add(
        "vehicle-stability-factor", QuantityKinds.Number, "Vehicle's stability factor", "half the track over the height of the mass centre: the larger, the later it tips. Cars have some 1.3 to 1.5, tall vehicles 1.0 to 1.2 (values from memory)",
        "(track-width ÷ 2 − mass centre aside) ÷ vehicle-centre-height", Rigid,
        (read, rig) => Factor(read, rig.VehicleAxles, read.Get(MassHeights.Vehicle, rig)));

    public static ResultDeclaration<RigStudy> VehicleThreshold { get; } = Set.Add(
        "vehicle-tip-threshold", QuantityKinds.Number, "Vehicle tips at, in g", "sideways acceleration, 1 is as much as gravity, that tips it in a steady curve; tyres may slide before",
        "0.85 × vehicle-stability-factor: springs and tyres give way", Rigid + "; 0.8 to 0.9 for springs and tyres, value from memory",
        (read, rig) => Rollover.Threshold(read.Get(VehicleFactor, rig)) / Constants.Gravity);

    public static ResultDeclaration<RigStudy> TrailerHeight { get; } = Set.Add(
        "trailer-centre-height", QuantityKinds.Length, "Trailer's mass centre", "above the road, as loaded; items without `high` leave it where it was",
        "cg-height, with the items and tanks of the loads at their heights", "sum of moments",
        (read, rig) => Trailing(read, rig, () => read.Get(MassHeights.Trailer, rig).Height));

    public static ResultDeclaration<RigStudy> TrailerFactor { get; } = Set.Add(
        "trailer-stability-factor", QuantityKinds.Number, "Trailer's stability factor", "half the track over the height of the mass centre; low and in the middle is what helps",
        "(track-width ÷ 2 − mass centre aside) ÷ trailer-centre-height", Rigid,
        (read, rig) => Trailing(read, rig, () => Factor(read, rig.TrailerAxles, read.Get(MassHeights.Trailer, rig))));

    public static ResultDeclaration<RigStudy> TrailerThreshold { get; } = Set.Add(
        "trailer-tip-threshold", QuantityKinds.Number, "Trailer tips at, in g", "sideways acceleration, 1 is as much as gravity, that tips it in a steady curve; a swing or a kerb tips it sooner",
        "0.85 × trailer-stability-factor: springs and tyres give way", Rigid + "; 0.8 to 0.9 for springs and tyres, value from memory",
        (read, rig) => Trailing(read, rig, () => Rollover.Threshold(read.Get(TrailerFactor, rig)) / Constants.Gravity));

    private static double Factor(Reader read, IReadOnlyCollection<AxleSubject> axles, PointMass centre)
    {
        double track = 0, count = 0;
        foreach (var axle in axles)
        {
            var equal = axle.Facts.EqualAxles is { } several ? read.Quantity(axle.Axle, several) : 1;
            track += equal * read.Quantity(axle.Axle, axle.Facts.TrackWidth);
            count += equal;
        }

        return Rollover.StabilityFactor(track / count, centre.Height, centre.Left);
    }

    private static double Trailing(Reader read, RigStudy rig, Func<double> value) => Rigs.LoadResults.Trailing(read, rig, value);
}

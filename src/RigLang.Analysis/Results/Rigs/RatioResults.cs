using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Rigs;

/// <summary>The ratios that the trade judges by.</summary>
public static class RatioResults
{
    private const string Definition = "definition";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> TongueRatio { get; } = Set.Add(
        "tongue-ratio", QuantityKinds.Ratio, "Tongue share", "tongue load as a share of the loaded trailer: too little makes it swing, too much loads the rear axle",
        "tongue-load ÷ trailer-load", Definition,
        (read, rig) => read.Get(LoadResults.TongueLoad, rig) / read.Get(LoadResults.TrailerLoad, rig));

    public static ResultDeclaration<RigStudy> HitchOverhang { get; } = Set.Add(
        "hitch-overhang", QuantityKinds.Length, "Rear axle to ball", "the lever with which the trailer works on the rear axle",
        "overhang, or pin-overhang + reach", Definition,
        (read, rig) => read.Get(Geometry.Overhang, rig));

    public static ResultDeclaration<RigStudy> OverhangRatio { get; } = Set.Add(
        "overhang-ratio", QuantityKinds.Ratio, "Overhang of wheelbase", "rear axle to ball as a share of the wheelbase; says more about steadiness than the wheelbase alone",
        "hitch-overhang ÷ wheelbase", Definition,
        (read, rig) => read.Get(HitchOverhang, rig) / read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase));

    public static ResultDeclaration<RigStudy> TrailerShare { get; } = Set.Add(
        "trailer-share", QuantityKinds.Ratio, "Trailer to vehicle", "the loaded trailer against the loaded vehicle without it",
        "trailer-load ÷ (front-axle-solo + rear-axle-solo)", Definition,
        (read, rig) => read.Get(LoadResults.TrailerLoad, rig) / (read.Get(LoadResults.FrontAxleSolo, rig) + read.Get(LoadResults.RearAxleSolo, rig)));

    public static ResultDeclaration<RigStudy> KerbShare { get; } = Set.Add(
        "kerb-share", QuantityKinds.Ratio, "Trailer to kerb mass", "the loaded trailer against the vehicle's mass in running order on its papers, as European advice counts",
        "trailer-load ÷ kerb-mass", Definition,
        (read, rig) => LoadResults.Trailing(read, rig, () => read.Get(LoadResults.TrailerLoad, rig) / read.Quantity(rig.Vehicle, VehicleFacts.KerbMass)));

    public static ResultDeclaration<RigStudy> FrontAxleChange { get; } = Set.Add(
        "front-axle-change", QuantityKinds.Ratio, "Front axle against solo", "what coupling takes from the front axle, as a share of its solo load; steering and front brakes live on it",
        "(front-axle-load − front-axle-solo) ÷ front-axle-solo", Definition,
        (read, rig) => LoadResults.Trailing(read, rig, () =>
        {
            var solo = read.Get(LoadResults.FrontAxleSolo, rig);
            return (read.Get(LoadResults.FrontAxleLoad, rig) - solo) / solo;
        }));
}

using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Loads;

/// <summary>
/// How high and how far aside the mass centres lie, as loaded. Items of which nobody says how high they lie are taken as high as the mass centre was, which
/// moves it neither way, and marked; those on the roof lie at the roof's height.
/// </summary>
internal static class MassHeights
{
    /// <summary>The vehicle with its load, uncoupled. Its position isn't reckoned here.</summary>
    public static Computation<RigStudy, PointMass> Vehicle { get; } = new("height of the loaded vehicle's mass centre", (read, rig) =>
    {
        var height = read.Quantity(rig.Vehicle, VehicleFacts.CgHeight);
        var centre = Raised(read, rig, "vehicle", new PointMass(read.Get(LoadStates.Weighed, rig).Total / Constants.Gravity, 0, height), read.Get(Cargo.OnVehicle, rig));
        var roof = read.Get(Cargo.OnRoofUnmeasured, rig);
        return roof == 0 ? centre : centre with { Height = centre.Height + (roof * (read.Quantity(rig.Vehicle, VehicleFacts.Height) - height) / centre.Mass) };
    });

    /// <summary>The trailer with its load.</summary>
    public static Computation<RigStudy, PointMass> Trailer { get; } = new("height of the loaded trailer's mass centre", (read, rig) =>
        Raised(
            read, rig, "trailer", new PointMass(read.Quantity(rig.Trailer, TrailerFacts.Mass), 0, read.Quantity(rig.Trailer, TrailerFacts.CgHeight)), read.Get(Cargo.OnTrailer, rig)));

    private static PointMass Raised(Reader read, RigStudy rig, string carrier, PointMass own, IReadOnlyList<PointMass> items)
    {
        foreach (var block in Cargo.WithoutHeight(rig, carrier))
        {
            read.StandIn(block, CargoFacts.Load.Item);
        }

        return PointMass.Sum([own, .. items.Select(item => double.IsNaN(item.Height) ? item with { Height = own.Height } : item)]);
    }
}

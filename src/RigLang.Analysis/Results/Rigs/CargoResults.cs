using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Rigs;

/// <summary>Loads as placards count them.</summary>
public static class CargoResults
{
    private const string Sum = "sum";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> CargoLoad { get; } = Set.Add(
        "cargo-load", QuantityKinds.Mass, "Occupants and cargo", "people and things in the vehicle, the hitch and the tongue load, as its placard counts them (49 CFR 571.110); fuel is not cargo",
        "items of the loads on vehicle + mass of the hitch + tongue-load", Sum,
        (read, rig) => Loaded(read, rig,
            read.Get(Cargo.OccupantsAndCargo, rig) + (rig.HasHitch ? read.Quantity(rig.Hitch, HitchFacts.Mass) : 0) + (rig.HasTrailer ? read.Get(LoadResults.TongueLoad, rig) : 0)));

    public static ResultDeclaration<RigStudy> RoofCargo { get; } = Set.Add(
        "roof-cargo", QuantityKinds.Mass, "On the roof", "items on the roof; the rack counts too, so list it",
        "items on roof", Sum,
        (read, rig) => read.Get(Cargo.OnRoof, rig) is var mass && mass > 0 ? mass : read.NotApplicable());

    public static ResultDeclaration<RigStudy> TrailerCargo { get; } = Set.Add(
        "trailer-cargo", QuantityKinds.Mass, "Trailer cargo", "what the loads add to the trailer as weighed; water counts, what was aboard then is taken off",
        "items and fills of the loads on trailer − what was aboard", Sum,
        (read, rig) => LoadResults.Trailing(read, rig, () => Loaded(read, rig, read.Get(Cargo.TrailerCargo, rig))));

    public static ResultDeclaration<RigStudy> MountPeak { get; } = Set.Add(
        "mount-peak", QuantityKinds.Force, "Largest force at a mount", "of rear and forward line, up or down, bars slack and set; static unless the practice assumes a `dynamic-factor` for bumps",
        "largest of rear-mount-force, forward-mount-force and the same with slack bars, × dynamic-factor where one is assumed", "the receiver as a beam on two lines",
        (read, rig) =>
        {
            double[] forces =
            [
                read.Get(HitchResults.RearMountForce, rig), read.Get(HitchResults.ForwardMountForce, rig),
                read.Get(HitchResults.RearMountSlack, rig), read.Get(HitchResults.ForwardMountSlack, rig),
            ];
            return forces.Max(Math.Abs) * (read.FigureIfAssumed(FigureFacts.DynamicFactor) ?? 1);
        });

    /// <summary>Without a load nobody has said what is aboard.</summary>
    private static double Loaded(Reader read, RigStudy rig, double value) => rig.Loads.Any() ? value : read.NotApplicable();
}

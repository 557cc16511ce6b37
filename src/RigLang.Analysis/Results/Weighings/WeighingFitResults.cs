using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Weighings;

/// <summary>What all readings say together, with the doubt that the scale's steps, or their own scatter, leave; and the trailer without its load.</summary>
public static class WeighingFitResults
{
    private const string Together =
        "every reading is a sum of five unknowns (front, rear, trailer, tongue, couple), so all are solved at once by weighted least squares; a reading is good to ± one scale-step, or to what they scatter by if that is more";

    public static ResultSet<WeighingStudy> Set { get; } = new(ResultScope.Weighing);

    public static ResultDeclaration<WeighingStudy> Tongue { get; } = AddFitted(
        "fitted-tongue", QuantityKinds.Mass, "Tongue load", "with slack bars", "the tongue load that fits all readings best", fit => fit.Solved.Tongue / Constants.Gravity, fit => Error(fit, 3) / Constants.Gravity);

    public static ResultDeclaration<WeighingStudy> Couple { get; } = AddFitted(
        "fitted-couple", QuantityKinds.Torque, "Couple of the bars", "of the bars as they were set", "the couple that fits all readings best", fit => fit.Solved.Couple, fit => Error(fit, 4));

    public static ResultDeclaration<WeighingStudy> Trailer { get; } = AddFitted(
        "fitted-trailer-mass", QuantityKinds.Mass, "Trailer with its load", "axles and tongue together", "the mass that fits all readings best", fit => fit.Solved.TrailerWeight / Constants.Gravity, fit => Error(fit, 2) / Constants.Gravity);

    public static ResultDeclaration<WeighingStudy> MassCentre { get; } = Set.Add(
        "fitted-mass-centre", QuantityKinds.Length, "Mass centre behind the coupling", "from whole weight and tongue",
        "coupling-to-axle × (1 − fitted-tongue ÷ fitted-trailer-mass)", "moments about the coupling",
        (read, weighing) => WithTrailer(read, weighing).MassCentre,
        (weighing, centre, system) => QuantityWriter.WriteWithHalfWidth(
            centre, 2 * Doubt(weighing, fit => fit.Solved.MassCentreError(weighing.Rig.Compute(Geometry.EquivalentAxle, weighing.Rig).Value)), QuantityKinds.Length.UnitFor(system)));

    public static ResultDeclaration<WeighingStudy> EmptyMass { get; } = Set.Add(
        "unloaded-trailer-mass", QuantityKinds.Mass, "Trailer, load off", "comparable with the trailer's own `mass`: the loads taken off, what is under `aboard` left in",
        "fitted-trailer-mass − the loads on the trailer", "the scale, less the loads by their masses",
        (read, weighing) => Empty(read, weighing).Mass);

    public static ResultDeclaration<WeighingStudy> EmptyTongue { get; } = Set.Add(
        "unloaded-tongue", QuantityKinds.Mass, "Tongue load, load off", "comparable with the trailer's own `tongue`: the loads taken off by their places",
        "fitted-tongue − Σ load × (1 − place ÷ coupling-to-axle)", "the scale, less the loads by moments about the axle",
        (read, weighing) => Empty(read, weighing).TongueMass);

    public static ResultDeclaration<WeighingStudy> EmptyMassCentre { get; } = Set.Add(
        "unloaded-mass-centre", QuantityKinds.Length, "Mass centre, load off", "of the trailer without the day's load",
        "coupling-to-axle × (1 − unloaded-tongue ÷ unloaded-trailer-mass)", "moments about the coupling",
        (read, weighing) => Empty(read, weighing).MassCentre);

    public static ResultDeclaration<WeighingStudy> LargestMisfit { get; } = Set.Add(
        "largest-misfit", QuantityKinds.Mass, "Furthest from all together", "the reading that the others agree with least",
        "largest |reading − what all readings together make of it|", Together,
        (read, weighing) => read.Get(WeighingFit.Of, weighing) is { } fit
            ? double.IsNaN(fit.Solved.Fit.Spread) ? read.NotApplicable() : Math.Abs(Furthest(fit).Residual) / Constants.Gravity
            : double.NaN,
        (weighing, misfit, system) => QuantityWriter.Write(misfit, QuantityKinds.Mass, system)
            + (weighing.Compute(WeighingFit.Of, weighing).Value is { } fit && Furthest(fit).Group is { } group ? $", {group.Pass.Block.Key} {group.Readings[0].Axles}" : ""));

    public static ResultDeclaration<WeighingStudy> Spread { get; } = Set.Add(
        "readings-spread", QuantityKinds.Number, "Scatter of the readings", "about 1 or less where they differ by no more than the scale's steps allow; above 2 something was copied wrong, or moved between the passes",
        "root of the weighted squares of what is left, over the readings in excess of the unknowns", Together,
        (read, weighing) => read.Get(WeighingFit.Of, weighing) is { Solved.Fit.Spread: var spread } ? double.IsNaN(spread) ? read.NotApplicable() : spread : double.NaN);

    private static ResultDeclaration<WeighingStudy> AddFitted(
        string name, QuantityKind kind, string title, string meaning, string formula, Func<WeighingFit, double> value, Func<WeighingFit, double> error) => Set.Add(
        name, kind, title, meaning + "; shown with its doubt, 19 times out of 20", formula, Together,
        (read, weighing) => Fitted(read, weighing, value),
        (weighing, found, system) => QuantityWriter.WriteWithHalfWidth(found, 2 * Doubt(weighing, error), kind.UnitFor(system)));

    /// <summary>What the readings can't tell has no row: the question doesn't arise before there is the pass for it, which a check names.</summary>
    private static double Fitted(Reader read, WeighingStudy weighing, Func<WeighingFit, double> value) =>
        read.Get(WeighingFit.Of, weighing) is { } fit ? double.IsNaN(value(fit)) ? read.NotApplicable() : value(fit) : double.NaN;

    private static TrailerLoad WithTrailer(Reader read, WeighingStudy weighing) =>
        new(read.Get(Trailer, weighing), read.Get(Tongue, weighing), read.Get(Geometry.EquivalentAxle, weighing.Rig));

    private static TrailerLoad Empty(Reader read, WeighingStudy weighing) =>
        TrailerWeighing.Without(WithTrailer(read, weighing), read.Get(Cargo.OnTrailer, weighing.Rig).ToArray());

    private static double Doubt(WeighingStudy weighing, Func<WeighingFit, double> error) =>
        weighing.Compute(WeighingFit.Of, weighing).Value is { } fit ? fit.Widening * error(fit) : double.NaN;

    private static double Error(WeighingFit fit, int unknown) => fit.Solved.Fit.Errors[unknown];

    private static (WeighedGroup? Group, double Residual) Furthest(WeighingFit fit) =>
        fit.Groups.Select((group, index) => ((WeighedGroup?)group, fit.Solved.Fit.Residuals[index])).MaxBy(one => Math.Abs(one.Item2));
}

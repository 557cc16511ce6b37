using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Runs;

/// <summary>What all logged drives of a rig say together of its road load.</summary>
public static class RunSetResults
{
    private const string Fitted =
        "weighted least squares over the drives, the model of trips taken as straight about the answer; weights from `±` and digits of `used` and from the wind that may have been missed";

    public static ResultSet<RunSetStudy> Set { get; } = new(ResultScope.RunSet);

    public static ResultDeclaration<RunSetStudy> DragArea { get; } = Set.Add(
        "fitted-drag-area", QuantityKinds.Area, "Drag area, fitted", "of the whole rig, from two or more drives at different speeds, or from a coast-down; shown with its doubt, 19 times out of 20",
        "the drag-area with which the model uses what was used", Fitted,
        (read, set) => read.Get(Fitting.Fit, set)?.Fit.DragArea ?? double.NaN,
        (set, area, system) => RunResults.WithDoubt(area, Square(Doubt(set).DragArea), QuantityKinds.Area.UnitFor(system)));

    public static ResultDeclaration<RunSetStudy> Rolling { get; } = Set.Add(
        "fitted-rolling", QuantityKinds.Number, "Rolling coefficient, fitted", "of the whole rig on asphalt, the same at all speeds",
        "the rolling with which the model uses what was used", Fitted,
        (read, set) => read.Get(Fitting.Fit, set)?.Fit.Rolling ?? double.NaN,
        (set, rolling, _) => RunResults.WithDoubt(rolling, Square(Doubt(set).Rolling), Units.One));

    public static ResultDeclaration<RunSetStudy> Spread { get; } = Set.Add(
        "fit-spread", QuantityKinds.Number, "Scatter of the drives", "about 1 where the drives differ from the fit by as much as their `±` and winds allow; clearly more where one of them is of another day",
        "root of the weighted squares of what is left, over the drives in excess of two unknowns", Fitted,
        (read, set) => read.Get(Fitting.Fit, set) is { Fit.Fit.Spread: var spread } ? double.IsNaN(spread) ? read.NotApplicable() : spread : double.NaN);

    private static FitDoubt Doubt(RunSetStudy set) => set.Compute(Fitting.Doubt, set).Value;

    private static double Square(double x) => x * x;
}

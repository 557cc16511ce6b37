using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>The logged drives fit another drag area or rolling than the rig counts with.</summary>
public sealed class RunsSayOtherwise : RunSetCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL815",
        Slug = "runs-say-otherwise",
        Severity = Severity.Note,
        Summary = "The logged drives of a rig fit another drag area or rolling than it counts with.",
        Why = "What was measured on the road with this rig is better than any estimate, and every trip rests on the two figures. The difference is more than their doubt.",
        Bad = RunExample.Of(RunExample.TwoRuns("19.50", "13.50")),
        Good = RunExample.Of(RunExample.TwoRuns("17.65", "13.99")),
        Fix = "Write both fitted figures into the rig, as the fix does: one without the other would fit worse than neither. Or leave out the drive of an odd day.",
    };

    public override IEnumerable<Finding> Run(RunSetStudy set)
    {
        var (drag, rolling) = (set.Compute(RunSetResults.DragArea, set), set.Compute(RunSetResults.Rolling, set));
        var (dragNow, rollingNow) = (set.Rig.Compute(RoadLoads.Drag, set.Rig), set.Rig.Compute(RoadLoads.OnAsphalt, set.Rig));
        if (!drag.IsComputed || !rolling.IsComputed || !dragNow.IsComputed || rollingNow.Missing is not null || set.Compute(Fitting.Fit, set).Value is not { } fit)
        {
            yield break;
        }

        var doubt = set.Compute(Fitting.Doubt, set).Value;
        var (dragHalf, rollingHalf) = (2 * doubt.DragArea, 2 * doubt.Rolling);
        var usual = rollingNow.Value.At(double.IsNaN(fit.Speed) ? 0 : fit.Speed);
        if (!Differs(drag.Value, dragHalf, dragNow.Value, Measured(set.Rig.Rig, RigFacts.DragArea)?.HalfWidth ?? 0) && !Differs(rolling.Value, rollingHalf, usual, Measured(set.Rig.Rig, RigFacts.Rolling)?.HalfWidth ?? 0))
        {
            yield break;
        }

        var words = (
            Drag: QuantityWriter.WriteWithHalfWidth(drag.Value, dragHalf, Measured(set.Rig.Rig, RigFacts.DragArea)?.Unit ?? Measured(set.Rig.Vehicle, VehicleFacts.DragArea)?.Unit ?? QuantityKinds.Area.Metric),
            Rolling: QuantityWriter.WriteWithHalfWidth(rolling.Value, rollingHalf, Measured(set.Rig.Rig, RigFacts.Rolling)?.Unit ?? Units.One));
        var dragCounted = Measured(set.Rig.Rig, RigFacts.DragArea)?.Text ?? QuantityWriter.Write(dragNow.Value, QuantityKinds.Area, DisplaySystem.Metric);
        var rollingCounted = Measured(set.Rig.Rig, RigFacts.Rolling)?.Text ?? QuantityWriter.Write(usual, Units.One, 4);
        var many = fit.Drives + fit.Coasts;
        var from = set.Parts.From;
        var isRig = from.Kind == DeclarationKind.Rig;
        yield return Report(
            isRig && set.Rig.Rig.Find(RigFacts.DragArea) is { } line && line.Place.Declaration == from.Own.Syntax ? line.Place : from.Own.NamePlace,
            $"{(many == 1 ? "The coast-down fits" : $"The {many} drives in sight fit")} a drag area of {words.Drag} and a rolling of {words.Rolling}{Mark(drag.IsEstimated)}. " +
            $"{set.Rig.Title} counts with {dragCounted}{Mark(dragNow.IsEstimated)} and {rollingCounted}{Mark(rollingNow.IsEstimated)}.") with
        {
            Related = isRig ? [.. set.Runs.Select(run => new Related(run.Parts.Run.Own.NamePlace, "a drive"))] : [new Related(set.Parts.Rig.Rig.Own.NamePlace, "the rig")],
            Fixes =
            [
                new Fix($"Write the fitted drag area and rolling into {set.Rig.Title}", [.. RigLines.Write(set.Parts.Rig.Rig, (RigFacts.DragArea, words.Drag), (RigFacts.Rolling, words.Rolling))]),
            ],
        };
    }

    private static string Mark(bool isEstimated) => isEstimated ? " (estimated)" : "";

    /// <summary>By more than both doubts allow.</summary>
    private static bool Differs(double fitted, double half, double counted, double countedHalf) =>
        Limits.Exceeds(Math.Abs(fitted - counted), Math.Sqrt((half * half) + (countedHalf * countedHalf)));

    private static Measure? Measured(Block block, FactDeclaration fact) => block.Find(fact)?.MeasureOf(Signature.ValueRole);
}

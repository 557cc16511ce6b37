using RigLang.Analysis.Results.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>The logged drives can't tell rolling from air.</summary>
public sealed class RunsTooAlike : RunSetCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL816",
        Slug = "runs-too-alike",
        Severity = Severity.Note,
        Summary = "The logged drives of a rig are too much alike in speed to tell rolling from air.",
        Why = "Rolling takes the same at any speed, air grows with its square. Drives at one speed tell only their sum, so neither figure is fitted.",
        Bad = RunExample.Of(RunExample.TwoRuns("18.0", "18.0").Replace("speed 70 km/h", "speed 90 km/h", StringComparison.Ordinal)),
        Good = RunExample.Of(RunExample.TwoRuns("18.0", "13.9")),
        Fix = "Log a drive that is slower or faster by 20 km/h or more.",
    };

    public override IEnumerable<Finding> Run(RunSetStudy set)
    {
        if (set.Compute(RunSetResults.DragArea, set) is { Applies: true, Missing: null, Refusal: { } why } && set.Compute(Fitting.Fit, set).Value is { } fit)
        {
            var speed = double.IsNaN(fit.Speed) ? "" : $" They were driven at about {QuantityWriter.Write(fit.Speed, QuantityKinds.Speed, DisplaySystem.Metric)}.";
            yield return Report(set.Parts.From.Own.NamePlace, $"Drag area and rolling of {set.Rig.Title} aren't fitted: {why}.{speed}");
        }
    }
}

using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>The log says litres of a battery vehicle, or kilowatt-hours of one with a tank.</summary>
public sealed class UseOfSomethingElse : RunCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL814",
        Slug = "use-of-something-else",
        Severity = Severity.Error,
        Summary = "`used` is in another kind of energy than the vehicle runs on.",
        Why = "It was meant for another rig, or the unit slipped; nothing is compared.",
        Bad = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                used 8 L
            """),
        Good = RunExample.Of("""
            run shakedown
                rig solo
                date 2026-09-12
                distance 100 km
                speed 90 km/h
                climb 0 m
                used 18 kWh
            """),
        Fix = "Write kWh for a battery, a volume for a tank, or name the rig that was driven.",
    };

    public override IEnumerable<Finding> Run(RunStudy run)
    {
        if (run.Block.Find(RunFacts.Used) is not { } line || line.MeasureOf(Signature.ValueRole) is not { } used)
        {
            yield break;
        }

        var isElectric = Drives.Battery(run.Rig) is not null;
        if ((isElectric || Drives.Engine(run.Rig) is not null) && (used.Kind == QuantityKinds.Energy) != isElectric)
        {
            yield return Report(line.Place, $"{used.Text} doesn't fit: the vehicle of {run.Rig.Title} runs on {(isElectric ? "its battery; write kWh" : "fuel; write a volume")}.");
        }
    }
}

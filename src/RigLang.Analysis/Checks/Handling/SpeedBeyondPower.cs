using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Power;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The drive can't hold the rig's speed even on the level.</summary>
public sealed class SpeedBeyondPower : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL616",
        Slug = "speed-beyond-power",
        Severity = Severity.Warning,
        Summary = "The drive can't hold the rig's speed for long, not even on a level road.",
        Why = "Results at that speed are about a drive that doesn't happen; times and use are better than they will be.",
        Bad = RigExample.Pulling("6 %").With(("    speed 80 km/h", "    speed 150 km/h")),
        Good = RigExample.Pulling("6 %"),
        Fix = "Name a `speed` that it holds; `top-speed` says which.",
        Source = "force at the wheels against rolling and air (textbook road load)",
    };

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower];

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (PowerResults.SteepestGrade.Compute(rig) is { IsComputed: true, Value: < 0 } grade && rig.Rig.Find(RigFacts.Speed)?.MeasureOf(Model.Declaring.Signature.ValueRole) is { } speed)
        {
            yield return Report(
                rig, RigFacts.Speed,
                $"The drive can't hold {speed.Text} for long, not even on a level road{Mark(grade)}. Name a speed that it holds.");
        }
    }
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>Only the friction of a head keeps the rig from swinging by itself.</summary>
public sealed class SteadyByFriction : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL612",
        Slug = "steady-by-friction-alone",
        Severity = Severity.Warning,
        Summary = "Only the friction of the hitch or the coupling head keeps a swing from growing at the rig's speed.",
        Why = "Friction holds small swings and gives way to wide ones, and to oil, rain or wear. A gust strong enough starts a swing that then grows.",
        Bad = RigExample.Swinging("20 kg", "104 km/h", friction: "400 N·m"),
        Good = RigExample.Swinging("20 kg", "75 km/h", friction: "400 N·m"),
        Fix = "Less speed; load towards the axle, a heavier tongue.",
        Source = "eigenvalues of the linear single-track model of vehicle and trailer, friction left out",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (StabilityResults.Damping.Compute(rig) is { IsComputed: true, Value: >= 0 } && StabilityResults.LargeSwingDamping.Compute(rig) is { IsComputed: true, Value: < 0 } left)
        {
            yield return Report(
                rig, RigFacts.Speed,
                $"Only friction keeps this rig from swinging by itself at its speed: a wide swing has a damping of {QuantityWriter.Write(left.Value, QuantityKinds.Number, DisplaySystem.Metric)}{Mark(left)} and grows. Drive slower, or move load towards the trailer's axle and make the tongue heavier.");
        }
    }
}

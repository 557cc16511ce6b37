using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>At the speed driven the rig is unstable.</summary>
public sealed class UnstableAtSpeed : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL611",
        Slug = "unstable-at-speed",
        Severity = Severity.Error,
        Summary = "At the speed of the rig or of a leg a swing grows by itself, or the vehicle turns away.",
        Why = "Nothing is needed to start it but a lorry or a gust, and no driver steers it out. This is no matter of taste: the model's own limit is passed, and the real one lies a little lower.",
        Bad = RigExample.Swinging("20 kg", "110 km/h"),
        Good = RigExample.Swinging("20 kg", "70 km/h"),
        Fix = "Less speed first. Then load towards the axle and off the trailer's ends, a heavier tongue, something against swing.",
        Source = "eigenvalues of the linear single-track model of vehicle and trailer",
    };

    public override ImmutableArray<Lever> Cures => [Levers.DriveSlower, .. Levers.Loading];

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (StabilityResults.Damping.Compute(rig) is { IsComputed: true, Value: < 0 } damping && rig.Rig.Find(RigFacts.Speed)?.MeasureOf(Signature.ValueRole) is { } speed)
        {
            yield return Report(rig, RigFacts.Speed, Message(speed.Text, damping));
        }
    }

    public override string? Figure(Study study, Finding finding) => study is RigStudy rig && StabilityResults.Damping.Compute(rig) is { IsComputed: true } damping ? Damping(damping) : null;

    internal static string Damping(Node<double> damping) => $"damping {QuantityWriter.Write(damping.Value, QuantityKinds.Number, DisplaySystem.Metric)}";

    internal static string Message(string speed, Node<double> damping)
    {
        var what = damping.Value <= -1 ? "the vehicle turns away by itself" : $"a swing grows by itself: its damping is {QuantityWriter.Write(damping.Value, QuantityKinds.Number, DisplaySystem.Metric)}";
        return $"At {speed}, {what}{Mark(damping)}. Do not drive so: drive slower, move load towards the trailer's axle and off its ends, make the tongue heavier.";
    }
}

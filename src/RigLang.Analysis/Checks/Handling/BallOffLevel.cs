using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The coupling is carried above or below the height at which the trailer stands level.</summary>
public sealed class BallOffLevel() : PracticeCheck(RigFacts.Trailer, ("ball-level", Miss.Below), ("ball-level", Miss.Above))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL605",
        Slug = "ball-off-level",
        Severity = Severity.Warning,
        Summary = "The coupling is carried above or below the height at which the trailer stands level.",
        Why = "Nose-high, a trailer of two sprung axles loads its rear one and lightens the tongue; nose-down it scrapes. Slightly nose-down is what most makers like.",
        Bad = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.10 m\n    ball-height 0.45 m"), ("        carries 1250 kg", "        carries 1250 kg\n        ride-rate 50 N/mm"), ("        carries 1150 kg", "        carries 1150 kg\n        ride-rate 60 N/mm"), ("coupling-to-axle 5.00 m", "coupling-to-axle 5.00 m\n    coupling-height 0.52 m")),
        Good = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.10 m\n    ball-height 0.45 m"), ("        carries 1250 kg", "        carries 1250 kg\n        ride-rate 50 N/mm"), ("        carries 1150 kg", "        carries 1150 kg\n        ride-rate 60 N/mm"), ("coupling-to-axle 5.00 m", "coupling-to-axle 5.00 m\n    coupling-height 0.42 m")),
        Fix = "Change the drop or rise of the ball mount, or the height of the coupling.",
        Source = "common practice; values from memory",
    };

    public override ImmutableArray<Lever> Cures => [Levers.ChangeBall, Levers.MoveItem];

    private protected override string Says(MissedLimit missed) => "The coupling's height against level is";

    private protected override string Advice(MissedLimit missed) => missed.Miss == Miss.Below ? "The trailer runs nose-down: carry the ball higher." : "The trailer runs nose-high: carry the ball lower.";
}

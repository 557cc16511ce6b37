using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>A swing dies away slowly, or grows.</summary>
public sealed class DampingLow() : PracticeCheck(RigFacts.Trailer, ("damping", Miss.Below))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL606",
        Slug = "damping-low",
        Severity = Severity.Warning,
        Summary = "A swing dies away slowly, or grows.",
        Why = "After a gust the trailer goes on swinging. Below zero it swings by itself, wider each time, and only slowing down gently ends it.",
        Bad = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.10 m\n    width 1.90 m"), ("    gross-rating 2000 kg", "    gross-rating 2000 kg\n    width 2.20 m\n    body-length 5.0 m"), ("tongue 105 kg", "tongue 65 kg"), ("item stores 100 kg at axle", "item stores 350 kg at 2.00 m behind axle")),
        Good = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.10 m\n    width 1.90 m"), ("    gross-rating 2000 kg", "    gross-rating 2000 kg\n    width 2.20 m\n    body-length 5.0 m"), ("coupling-to-axle 5.00 m", "coupling-to-axle 6.00 m")),
        Fix = "More load ahead of the axle and less at the trailer's ends, a heavier tongue, something against swing, less speed.",
        Source = "common practice after SAE J2807 and ISO 9815: 0.10 at 100 km/h (values from memory)",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(MissedLimit missed) => "A swing dies away with a damping of";

    private protected override string Advice(MissedLimit missed) => missed.Node.Value < 0 ? "At that speed it grows by itself. Do not drive so: move load towards the axle, make the tongue heavier, or drive slower." : "Move load towards the axle, make the tongue heavier, or drive slower.";
}

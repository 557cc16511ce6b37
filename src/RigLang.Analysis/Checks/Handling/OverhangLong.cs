using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The ball is far behind the rear axle for the wheelbase.</summary>
public sealed class OverhangLong() : PracticeCheck(RigFacts.Vehicle, ("overhang-ratio", Miss.Above))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL603",
        Slug = "overhang-long",
        Severity = Severity.Warning,
        Summary = "The ball is far behind the rear axle for the wheelbase.",
        Why = "The longer that lever, the more the trailer steers the vehicle and the more every kilogram on the tongue weighs at the rear axle.",
        Bad = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.60 m")),
        Good = RigExample.Practised("common-eu"),
        Fix = "A shorter ball mount, where there is one; else less speed, a heavier front and something against swing.",
        Source = "common practice; values from memory",
    };

    private protected override string Says(MissedLimit missed) => "From rear axle to ball it is, as a share of the wheelbase,";

    private protected override string Advice(MissedLimit missed) => "A shorter ball mount helps; the rest is speed.";
}

using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The trailer is heavy for its vehicle.</summary>
public sealed class TrailerHeavy() : PracticeCheck(RigFacts.Trailer, ("kerb-share", Miss.Above), ("trailer-share", Miss.Above))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL604",
        Slug = "trailer-heavy",
        Severity = Severity.Warning,
        Summary = "The trailer is heavy for its vehicle.",
        Why = "In a swing the heavier of the two leads. Advice to beginners is to stay well below the vehicle's own mass.",
        Bad = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.10 m\n    kerb-mass 1500 kg")),
        Good = RigExample.Practised("common-eu").With(("overhang 1.10 m", "overhang 1.10 m\n    kerb-mass 2300 kg")),
        Fix = "Leave load behind, tow with something heavier, or drive slower and with something against swing.",
        Source = "common practice; values from memory",
    };

    public override ImmutableArray<Lever> Cures => Levers.Lightening;

    private protected override string Says(MissedLimit missed) => missed.Result == "kerb-share" ? "Against the vehicle's kerb mass the loaded trailer weighs" : "Against the loaded vehicle the trailer weighs";

    private protected override string Advice(MissedLimit missed) => "Leave load behind, or tow it with something heavier.";
}

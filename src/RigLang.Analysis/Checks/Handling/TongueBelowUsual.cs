using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The tongue takes a smaller share of the trailer than is usual.</summary>
public sealed class TongueBelowUsual() : PracticeCheck(RigFacts.Trailer, ("tongue-ratio", Miss.Below))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL601",
        Slug = "tongue-below-usual",
        Severity = Severity.Warning,
        Summary = "The tongue takes a smaller share of the trailer than is usual.",
        Why = "A trailer that is heavy behind its axle swings sooner, and each swing grows from a lower speed on.",
        Bad = RigExample.Practised("common-eu").With(("tongue 105 kg", "tongue 50 kg")),
        Good = RigExample.Practised("common-eu"),
        Fix = "Move load ahead of the axle, heavy things first; keep within the ratings of ball and coupling.",
        Source = "common practice; values from memory",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(MissedLimit missed) => "Of the loaded trailer the tongue takes";

    private protected override string Advice(MissedLimit missed) => "Move load ahead of the axle: a light tongue lets a trailer swing.";
}

using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>The tongue takes a larger share of the trailer than is usual.</summary>
public sealed class TongueAboveUsual() : PracticeCheck(RigFacts.Trailer, ("tongue-ratio", Miss.Above))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL602",
        Slug = "tongue-above-usual",
        Severity = Severity.Warning,
        Summary = "The tongue takes a larger share of the trailer than is usual.",
        Why = "It presses on the rear axle with a lever and takes load off the front one that steers and does most of the braking.",
        Bad = RigExample.Practised("common-eu").With(("tongue 105 kg", "tongue 180 kg")),
        Good = RigExample.Practised("common-eu"),
        Fix = "Move load towards the axle, or behind it, a little at a time.",
        Source = "common practice; values from memory",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override string Says(MissedLimit missed) => "Of the loaded trailer the tongue takes";

    private protected override string Advice(MissedLimit missed) => "Move load rearward, a little at a time.";
}

using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>A rating is used up further than the practice allows.</summary>
public sealed class NearRating() : PracticeCheck(RigFacts.Vehicle, ("rating-use", Miss.Above))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL607",
        Slug = "near-rating",
        Severity = Severity.Warning,
        Summary = "A rating is used up further than the practice allows.",
        Why = "Scales have steps, tanks fill and people bring things: a rig that is just within its ratings at home is over them at the ferry.",
        Bad = RigExample.Practised("ours") + """


            practice ours
                limit rating-use < 70 %
            """,
        Good = RigExample.Practised("ours") + """


            practice ours
                limit rating-use < 95 %
            """,
        Fix = "Leave load behind, or move it; the table of ratings says which one is nearest.",
        Source = "common practice",
    };

    public override ImmutableArray<Lever> Cures => [Levers.SetBars, .. Levers.Loading];

    private protected override string Says(MissedLimit missed) => "The most used rating is used up to";

    private protected override string Advice(MissedLimit missed) => "Leave something behind before a tank or a souvenir takes the rest.";
}

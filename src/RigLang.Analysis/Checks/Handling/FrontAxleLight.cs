using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>Coupling takes more off the front axle than the practice allows.</summary>
public sealed class FrontAxleLight() : PracticeCheck(RigFacts.Vehicle, ("front-axle-change", Miss.Below))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL608",
        Slug = "front-axle-light",
        Severity = Severity.Warning,
        Summary = "Coupling takes more off the front axle than the practice allows.",
        Why = "The front axle steers and does most of the braking. Light, it slides straight on in a wet bend.",
        Bad = RigExample.Practised("ours") + """


            practice ours
                limit front-axle-change > -2 %
            """,
        Good = RigExample.Practised("ours") + """


            practice ours
                limit front-axle-change > -10 %
            """,
        Fix = "Less tongue load, a shorter ball mount, or spring bars that bring it back.",
        Source = "common practice",
    };

    public override ImmutableArray<Lever> Cures => [Levers.SetBars, .. Levers.Loading];

    private protected override string Says(MissedLimit missed) => "Against solo the front axle changes by";

    private protected override string Advice(MissedLimit missed) => "Lighten the tongue, shorten the lever, or set the bars tighter.";
}

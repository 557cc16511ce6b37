using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>Vehicle or trailer tips sooner than the practice allows.</summary>
public sealed class TipsEasily() : PracticeCheck(
    RigFacts.Load, ("vehicle-stability-factor", Miss.Below), ("trailer-stability-factor", Miss.Below), ("vehicle-tip-threshold", Miss.Below), ("trailer-tip-threshold", Miss.Below))
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL613",
        Slug = "tips-easily",
        Severity = Severity.Warning,
        Summary = "Vehicle or trailer tips sooner in a curve than the practice allows.",
        Why = "A tall load on a narrow track leans over in a bend that the tyres would still hold.",
        Bad = Loaded("1.90 m"),
        Good = Loaded("0.60 m"),
        Fix = "Heavy things low and in the middle; less on the roof; slower round bends.",
        Source = "quasi-static stability factor; a practice's limits are its own (in common-na: class limits of the US programme of 2001, value from memory)",
    };

    public override ImmutableArray<Lever> Cures => [Levers.LeaveBehind];

    private protected override string Says(MissedLimit missed) => missed.Result.EndsWith("threshold", StringComparison.Ordinal)
        ? $"The {Body(missed)} tips at a sideways acceleration, in g, of"
        : $"The {Body(missed)} has a stability factor of";

    private protected override string Advice(MissedLimit missed) => "Put heavy things low, take them off the roof, and take bends slower.";

    private static string Body(MissedLimit missed) => missed.Result.StartsWith("trailer", StringComparison.Ordinal) ? "trailer" : "vehicle";

    private static string Loaded(string height) => RigExample.Practised("common-na").With(
        ("    overhang 1.10 m", "    overhang 1.10 m\n    cg-height 0.75 m"), ("        carries 1250 kg", "        carries 1250 kg\n        track-width 1.60 m"), ("        carries 1150 kg", "        carries 1150 kg\n        track-width 1.60 m"),
        ("item people 150 kg at 1.40 m behind front-axle", $"item people 150 kg at 1.40 m behind front-axle high {height}"));
}

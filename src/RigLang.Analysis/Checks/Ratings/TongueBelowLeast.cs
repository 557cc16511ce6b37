using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>The tongue load is less than a maker asks for.</summary>
public sealed class TongueBelowLeast : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL319",
        Slug = "tongue-below-least",
        Severity = Severity.Error,
        Summary = "The tongue load is less than a maker asks for.",
        Why = "Some makers give a least load besides the most: below it their coupling or drawbar isn't steady.",
        Bad = RigExample.Pair.With(("tongue-rating 230 kg", "tongue-rating 230 kg\n    tongue-least 120 kg")),
        Good = RigExample.Pair.With(("tongue-rating 230 kg", "tongue-rating 230 kg\n    tongue-least 25 kg")),
        Fix = "Move load ahead of the trailer's axle.",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        var tongue = rig.Compute(LoadResults.TongueLoad, rig);
        if (!tongue.IsComputed)
        {
            yield break;
        }

        foreach (var (owner, fact, named, whose) in new[] { (rig.Vehicle, VehicleFacts.TongueLeast, RigFacts.Vehicle, "vehicle"), (rig.Trailer, TrailerFacts.TongueLeast, RigFacts.Trailer, "trailer") })
        {
            if (owner.Find(fact) is { } line && line.MeasureOf(Signature.ValueRole) is { } least && Limits.FallsBelow(tongue.Value, least.Value))
            {
                yield return Report(
                    rig, named,
                    $"The tongue load is {QuantityWriter.WriteAgainst(tongue.Value, least)}{Mark(tongue)}; the {whose}'s maker asks for {least.Text} at least. Move load ahead of the trailer's axle.")
                    with { About = whose, Related = [new Related(line.Place, "the least load")] };
            }
        }
    }
}

using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>The tongue load is less than German law asks for.</summary>
public sealed class TongueBelowLaw() : LawCheck("de")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL322",
        Slug = "tongue-below-law",
        Severity = Severity.Error,
        Summary = "The tongue load is less than German law asks for.",
        Why = "A trailer that hangs on its coupling from below lifts the vehicle's tail and swings.",
        Bad = RigExample.Ruled("de").With(("tongue 105 kg", "tongue 15 kg")),
        Good = RigExample.Ruled("de"),
        Fix = "Move load ahead of the axle until the tongue carries 4 % of the trailer, or 25 kg.",
        Source = "StVZO section 44(3), read in the state of 2022-03-26",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (rig.HasTrailer && Known(rig.Compute(LoadResults.TongueLoad, rig)) is { } tongue && Known(rig.Compute(LoadResults.TrailerLoad, rig)) is { } trailer
            && GermanTowing.LeastNose(trailer.Value) is var least && Limits.FallsBelow(tongue.Value, least))
        {
            yield return Report(
                rig, RigFacts.Trailer,
                $"The tongue load is {Mass(rig, tongue.Value)}{Mark(tongue)}; German law asks for {Mass(rig, least)} with this trailer: 4 % of it, or 25 kg if that is less (StVZO 44(3), {AsRead}). Move load ahead of the axle.");
        }
    }
}

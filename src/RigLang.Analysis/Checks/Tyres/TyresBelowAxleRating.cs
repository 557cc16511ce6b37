using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>The tyres of an axle together may carry less than the axle.</summary>
public sealed class TyresBelowAxleRating : TyreCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL503",
        Slug = "tyres-below-axle-rating",
        Severity = Severity.Warning,
        Summary = "The tyres of an axle together may carry less than the axle.",
        Why = "The axle's plate then promises more than what it stands on: the tyres end first.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 95H\n        pressure 250 kPa")),
        Good = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 103H\n        pressure 250 kPa")),
        Fix = "Check size and load index against the papers. If they are so, load by the tyres.",
        Source = "49 CFR 571.110 S4.2.2.1; with `rules eu` or `de` 45 % of a trailer axle's rating for each tyre (Regulation (EU) 458/2011, value from memory)",
    };

    private protected override IEnumerable<Finding> Run(AxleSubject axle)
    {
        var rated = axle.Study.Compute(TyreResults.RatedLoad, axle);
        if (!rated.IsComputed || axle.Axle.Find(axle.Facts.AxleRating)?.MeasureOf(Signature.ValueRole) is not { } rating)
        {
            yield break;
        }

        var wheels = axle.Axle.Find(axle.Facts.Wheels)?.MeasureOf(Signature.ValueRole)?.Value ?? 2;
        var together = wheels * rated.Value;

        // 45 % of the axle's mass on each tyre in place of half, for light trailers that do at most 100 km/h.
        var isLightTrailer = axle.IsTrailer && axle.Rig.Rig.Find(RigFacts.Rules)?.WordOf(Signature.ValueRole) is "de" or "eu";
        var needed = isLightTrailer ? wheels * TyreLoad.EuropeanTrailerShare * rating.Value : rating.Value;
        if (Limits.FallsBelow(together, needed))
        {
            yield return Report(axle, $"The tyres of {Name(axle)} may carry {Mass(axle, together)} together, the axle {rating.Text}. Load by the tyres, or fit ones that match the axle.", axle.Facts.AxleRating);
        }
    }
}

using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>Each tyre of an axle carries more than its load index allows.</summary>
public sealed class TyresOverloaded : TyreCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL501",
        Slug = "tyres-overloaded",
        Severity = Severity.Error,
        Summary = "Each tyre of an axle carries more than its load index allows.",
        Why = "An overloaded tyre flexes until it is too hot to hold together, and it gives way at speed, in summer, on the trailer. More pressure doesn't raise its rating.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 91H\n        pressure 250 kPa")),
        Good = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 250 kPa")),
        Fix = "Lighten the axle, or fit tyres with a higher load index that the vehicle's maker allows.",
        Source = "load index table of ISO 4000-1, ETRTO and UN R30; 49 CFR 571.110 S4.2.2.2 for the divisor",
    };

    public override ImmutableArray<Lever> Cures => Levers.Loading;

    public override string? Figure(Study study, Finding finding) => Carried(study, finding);

    private protected override IEnumerable<Finding> Run(AxleSubject axle)
    {
        var study = axle.Study;
        var load = study.Compute(TyreResults.Load, axle);
        var rated = study.Compute(TyreResults.RatedLoad, axle);
        if (load.IsComputed && rated.IsComputed && Limits.Exceeds(load.Value, rated.Value))
        {
            var derated = study.Compute(Tyre.IsDerated, axle).Value ? " once divided by 1.10, as the rules ask here" : "";
            yield return Report(
                axle,
                $"Each tyre of {Name(axle)} carries {Mass(axle, load.Value)}{Mark(load)}, {Mass(axle, load.Value - rated.Value)} more than its load index allows, {Mass(axle, rated.Value)}{derated}. Lighten the axle or fit tyres that are made for it.");
        }
    }
}

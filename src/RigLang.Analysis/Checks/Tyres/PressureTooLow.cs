using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>At its pressure a tyre carries less than is on it.</summary>
public sealed class PressureTooLow : TyreCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL502",
        Slug = "pressure-too-low",
        Severity = Severity.Warning,
        Summary = "At its pressure a tyre carries less than is on it.",
        Why = "The load index holds at the rated pressure only. Below it the same tyre is a smaller one, and nothing shows.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 180 kPa")),
        Good = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 250 kPa")),
        Fix = "Inflate to what the maker gives for the load; the least pressure by load index stands in the message.",
        Source = "load in proportion to pressure to a power by tyre class, exponents from memory of the yearbooks",
    };

    public override ImmutableArray<Lever> Cures => [Levers.Inflate, .. Levers.Loading];

    public override string? Figure(Study study, Finding finding) => Carried(study, finding);

    private protected override IEnumerable<Finding> Run(AxleSubject axle)
    {
        var study = axle.Study;
        var load = study.Compute(TyreResults.Load, axle);
        var rated = study.Compute(TyreResults.RatedLoad, axle);
        var capacity = study.Compute(TyreResults.Capacity, axle);
        var least = study.Compute(TyreResults.LeastPressure, axle);

        // Above the load index no pressure helps: that is a check of its own.
        if (load.IsComputed && capacity.IsComputed && least.IsComputed && Limits.Exceeds(load.Value, capacity.Value) && !Limits.Exceeds(load.Value, rated.Value))
        {
            yield return Report(
                axle,
                $"Each tyre of {Name(axle)} carries {Mass(axle, load.Value)}{Mark(load)}; at {axle.Rig.Line(axle.Axle, axle.Facts.Pressure)!.MeasureOf(Signature.ValueRole)!.Text} it is good for {Mass(axle, capacity.Value)}{Mark(capacity)}. It needs {Pressure(axle, least.Value)} at least, cold; the maker's own figure counts before this one.",
                axle.Facts.Pressure);
        }
    }
}

using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>The rig's speed is above what a tyre's speed symbol allows.</summary>
public sealed class TyreTooSlow : TyreCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL504",
        Slug = "tyre-too-slow",
        Severity = Severity.Error,
        Summary = "The rig's speed is above what a tyre's speed symbol allows.",
        Why = "Heat grows with speed. A trailer tyre is often good for less than the tow vehicle's, and its symbol is easily overlooked.",
        Bad = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101G\n        pressure 250 kPa")).With(("    trailer box\n", "    trailer box\n    speed 100 km/h\n")),
        Good = RigExample.Pair.With(("axle-rating 1700 kg", "axle-rating 1700 kg\n        tyres 225/55R17 101H\n        pressure 250 kPa")).With(("    trailer box\n", "    trailer box\n    speed 100 km/h\n")),
        Fix = "Drive no faster than the slowest tyre.",
        Source = "speed symbol table of ISO 4000-1, ETRTO and UN R30; 65 mph for ST tyres without one is common practice, value from memory",
    };

    private protected override IEnumerable<Finding> Run(AxleSubject axle)
    {
        var top = axle.Study.Compute(TyreResults.TopSpeed, axle);
        if (top.IsComputed && axle.Rig.Rig.Find(RigFacts.Speed) is { } line && line.MeasureOf(Signature.ValueRole) is { } speed && Limits.Exceeds(speed.Value, top.Value))
        {
            var why = top.IsEstimated ? "an ST tyre without a speed symbol is commonly good for" : "its speed symbol allows";
            yield return Report(axle, $"The rig's `speed` is {speed.Text}, but on {Name(axle)} a tyre is the limit: {why} {QuantityWriter.WriteLike(top.Value, speed)}. Drive slower.") with
            {
                Severity = top.IsEstimated ? Severity.Warning : Severity.Error,
            };
        }
    }
}

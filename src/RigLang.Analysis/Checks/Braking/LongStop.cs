using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Braking;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Braking;

/// <summary>With all its brakes the rig slows less than is asked of vehicles.</summary>
public sealed class LongStop : RigCheck
{
    /// <summary>Least deceleration of a laden vehicle or trailer, m/s².</summary>
    private const double Least = 5.0;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL620",
        Slug = "long-stop",
        Severity = Severity.Warning,
        Summary = "Even on a dry road the rig slows down less than is asked of vehicles.",
        Why = "A trailer without brakes, or with weak ones, is stopped by the tow vehicle's tyres, and they have only so much grip. Everybody ahead stops shorter.",
        Bad = RigExample.Pair.With(("brakes overrun", "brakes none"), ("mass 1500 kg", "mass 1900 kg")) + "\n    speed 80 km/h",
        Good = RigExample.Pair + "\n    speed 80 km/h",
        Fix = "A trailer with brakes, brakes that pull harder, or less on the trailer. Until then: slower, and far behind the one ahead.",
        Source = "5.0 m/s² after StVZO 41(9), read in the state of 2022-03-26 (trailers), and UN R13, value from memory (light goods vehicles)",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.Compute(Stops.OnDryRoad, rig) is not { Missing: null, Applies: true } stop || !Limits.FallsBelow(stop.Value.Deceleration, Least))
        {
            yield break;
        }

        var distance = BrakingResults.StopDistance.Compute(rig) is { IsComputed: true } node
            ? $" Its `stop-distance` is {QuantityWriter.Write(node.Value, QuantityKinds.StopLength, DisplaySystem.Metric)}{Mark(node)}."
            : "";
        var cause = rig.HasTrailer && rig.Trailer.Find(TrailerFacts.Brakes)?.WordOf("value") == "none" ? "the trailer has no brakes" : "its brakes and tyres give no more";
        yield return Report(
            rig, RigFacts.Trailer,
            $"On a dry road the rig slows down by {QuantityWriter.Write(stop.Value.Deceleration, QuantityKinds.Acceleration, DisplaySystem.Metric)}{Mark(stop)}, less than the {QuantityWriter.Write(Least, QuantityKinds.Acceleration, DisplaySystem.Metric)} asked of laden vehicles: {cause}.{distance} Take a braked trailer or a lighter one.");
    }
}

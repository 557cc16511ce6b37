using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A heavy trailer has nothing that damps or brakes a swing.</summary>
public sealed class NoSwayDevice : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL412",
        Slug = "no-sway-device",
        Severity = Severity.Note,
        Summary = "A heavy trailer has nothing that damps or brakes a swing.",
        Why = "A gust or a lorry starts a swing; what lies in the load and in the tyres ends it. A friction head, a stabiliser or a stability control is the second line.",
        Bad = RigExample.Pair.With(("    stabiliser yes\n", "")),
        Good = RigExample.Pair,
        Fix = "Fit a stabiliser or friction head and say so, or show by `expect damping > 0.10 at 100 km/h` that the rig does without.",
        Source = "common practice",
    };

    /// <summary>From here on a trailer is heavy for its vehicle (our choice).</summary>
    private const double HeavyShare = 0.5;

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        if (rig.HasTrailer && !HasDevice(rig) && rig.Compute(RatioResults.TrailerShare, rig) is { IsComputed: true } share && Limits.Exceeds(share.Value, HeavyShare))
        {
            yield return Report(
                rig, RigFacts.Trailer,
                $"The trailer weighs {QuantityWriter.Write(share.Value, QuantityKinds.Ratio, DisplaySystem.Metric)}{Mark(share)} of the vehicle, and nothing is said of a stabiliser, a friction head or a stability control. Say what there is, or prove the damping by an `expect`.");
        }
    }

    /// <summary>Asked for counts as there: the open question is told of by itself.</summary>
    private static bool HasDevice(RigStudy rig) =>
        IsThere(rig.Hitch.Find(HitchFacts.YawFriction)) || IsThere(rig.Hitch.Find(HitchFacts.YawDamping)) || IsThere(rig.Trailer.Find(TrailerFacts.YawFriction))
        || IsThere(rig.Trailer.Find(TrailerFacts.Stabiliser)) || IsThere(rig.Trailer.Find(TrailerFacts.StabilityControl)) || IsThere(rig.Vehicle.Find(VehicleFacts.StabilityControl));

    private static bool IsThere(Fact? line) => line switch
    {
        null => false,
        { Value: AbsentValue } => false,
        _ => line.WordOf(Signature.ValueRole) != "no",
    };
}

using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Model.Estimates;

/// <summary>What stands in for facts of a hitch.</summary>
internal static class HitchEstimates
{
    public static Estimate Mass { get; } = new(
        "0 kg, with spring bars 40 kg", "our choice",
        (read, hitch) => read.Word(hitch, HitchFacts.Type) switch { null => double.NaN, "weight-distributing" => 40, _ => 0 },
        0.5);
}

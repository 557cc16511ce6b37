using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>An uncertainty is larger than the value, of something that can't be less than nothing.</summary>
public static class HalfWidthOverValue
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL215",
        Slug = "half-width-over-value",
        Severity = Severity.Warning,
        Summary = "What stands behind ± is more than the value, of something that can't be less than nothing.",
        Why = "A mass of 40 kg ± 60 kg says that it may well be below zero. A digit or a unit has slipped, or nothing is known of it: then an estimate with its own spread says more.",
        Bad = """
            trailer box
                mass 400 kg ± 500 kg
            """,
        Good = """
            trailer box
                mass 400 kg ± 50 kg
            """,
        Fix = "Write half of the range in which the true value lies 19 times out of 20, or `?` where nobody knows.",
    };

    /// <summary>Whether the value, taken by itself, would be below nothing more than once in forty times.</summary>
    public static bool Applies(FactDeclaration fact, Measure measure) =>
        measure.Value > 0 && Limits.Exceeds(measure.HalfWidth, measure.Value) && (fact.MustBePositive || !CanBeNegative(measure.Kind));

    public static Finding Report(Place place, FactDeclaration fact, Measure measure) => new(
        Declaration, place,
        $"`{fact.Keyword}` is {QuantityWriter.WriteLike(measure.Value, measure)} with ± {QuantityWriter.WriteLike(measure.HalfWidth, measure)}: that reaches below nothing, which it can't be.");

    /// <summary>Heights and temperatures count from somewhere; slopes, bearings and winds have a direction.</summary>
    private static bool CanBeNegative(QuantityKind kind) =>
        kind.IsTemperature || kind.IsTemperatureDifference || kind.IsSlope || kind == QuantityKinds.Angle || kind == QuantityKinds.Height || kind == QuantityKinds.Speed;
}

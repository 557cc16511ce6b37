using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A share is more than the whole.</summary>
public static class RatioAboveRange
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL214",
        Slug = "ratio-above-range",
        Severity = Severity.Error,
        Summary = "A share is more than the whole.",
        Why = "Most likely a percent sign is missing or one too many.",
        Bad = """
            trip t
                start-charge 9.5
            """,
        Good = """
            trip t
                start-charge 95 %
            """,
        Fix = "Write the share in percent.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place place, FactDeclaration fact, Measure measure) =>
        new(Declaration, place, $"`{fact.Keyword}` is a share and can't be {measure.Text}, which is {QuantityWriter.Write(measure.Value, QuantityKinds.Ratio, DisplaySystem.Metric)} of the whole. It is left out of all results.");
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A value is far from what such a thing ordinarily has.</summary>
public static class MagnitudeUnlikely
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL213",
        Slug = "magnitude-unlikely",
        Severity = Severity.Warning,
        Summary = "A value is far from what such a thing ordinarily has.",
        Why = "Nine times in ten it is a slip of unit or digit: mm for m, kg for lb.",
        Bad = """
            vehicle van
                wheelbase 294 m
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Check digit and unit; accept the finding if the value is right.",
    };

    public static Finding Report(Place place, FactDeclaration fact, Measure measure, (double Low, double High) range)
    {
        string Written(double si) => QuantityWriter.Write(si, measure.Unit, 3);
        return new Finding(Declaration, place, $"{measure.Text} is an unlikely `{fact.Keyword}`: ordinarily {Written(range.Low)} to {Written(range.High)}. Check digit and unit.");
    }
}

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
        // 0.8 bar, and not 0.800 bar: a usual range is no measurement.
        int Decimals(double value) => Enumerable.Range(0, 3).FirstOrDefault(decimals => Math.Abs(Math.Round(value, decimals) - value) < 0.0005, 3);
        string Written(double si) => QuantityWriter.Write(si, measure.Unit, Decimals(measure.Unit.FromSi(si)));
        return new Finding(Declaration, place, $"{measure.Text} is an unlikely `{fact.Keyword}`: ordinarily {Written(range.Low)} to {Written(range.High)}. Check digit and unit.");
    }
}

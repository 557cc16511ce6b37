using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>The result that an <c>expect</c> line is about can't be computed.</summary>
public static class ExpectationUntested
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL907",
        Slug = "expectation-untested",
        Severity = Severity.Warning,
        Summary = "An `expect` line is about a result that can't be computed yet.",
        Why = "An expectation that nobody looks at seems to be met. Not said while a line that it rests on is in error.",
        Bad = """
            vehicle van
                wheelbase 3 m
                axle front
                    carries 1000 kg
                aboard nothing

            rig solo
                vehicle van
                expect front-axle-load < 1100 kg
            """,
        Good = """
            vehicle van
                wheelbase 3 m
                axle front
                    carries 1000 kg
                axle rear
                    carries 900 kg
                aboard nothing

            rig solo
                vehicle van
                expect front-axle-load < 1100 kg
            """,
        Fix = "Write the line that the message names.",
    };

    internal static Finding Report(Bound bound, MissingFact missing) =>
        new(Declaration, bound.Line.Place, $"`{bound.Result.Name}` isn't computed, so nothing is tested here: it needs {missing.Words}.");
}

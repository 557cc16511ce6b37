using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>The checks of what a file expects, limits and assumes. Those of trips stand with the trips.</summary>
public static class ExpectationChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new ExpectationMissed(), new WeighingExpectationMissed(), new RunExpectationMissed(), new UnknownResult(), new UnknownAssumption(), new NeverJudged(),
    ];
}

using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;

namespace RigLang.Analysis.Doubts;

/// <summary>
/// How far a result may be from the truth, by what is written with ± and by the spreads of estimates. A fact that several steps read is one cause: a drag area that is
/// wrong is wrong on all legs alike.
/// </summary>
/// <param name="Value">The result, SI.</param>
/// <param name="HalfWidth">SI; holds the truth 19 times out of 20, to first order: √ of the sum of the squares of the parts. Zero where nothing is in doubt.</param>
/// <param name="Parts">What each uncertain fact does to the result, the greatest first.</param>
/// <param name="Unspread">Estimates whose spread nobody knows: what they do isn't in it.</param>
public sealed record Doubt(double Value, double HalfWidth, ImmutableArray<DoubtPart> Parts, ImmutableArray<NumericFact> Unspread)
{
    /// <summary>Half of what a part moves must be straight, else the first order says too little or too much.</summary>
    private const double MostBent = 0.25;

    /// <summary>Whether the result is bent within the doubt of its facts, so that draws tell more than the first order.</summary>
    public bool IsCurved => Parts.Any(part => !(Math.Abs(part.Bend) <= MostBent * HalfWidth));

    /// <summary>The chance that the true value is above a limit (SI), 0 to 1, taken as normal.</summary>
    public double ChanceAbove(double limit) => 1 - ChanceBelow(limit);

    /// <summary>The chance that the true value is below a limit (SI), 0 to 1, taken as normal.</summary>
    public double ChanceBelow(double limit) => Normal.ChanceBelow(Value, HalfWidth / 2, limit);
}

/// <summary>What one uncertain fact does to a result.</summary>
/// <param name="Fact">With its half-width.</param>
/// <param name="Effect">SI: by how much the result moves when the fact is at the upper end of its half-width, by the slope about the value.</param>
/// <param name="Bend">SI: by how much the result's mean over both sides leaves its value; NaN where one side can't be computed.</param>
public sealed record DoubtPart(NumericFact Fact, double Effect, double Bend);

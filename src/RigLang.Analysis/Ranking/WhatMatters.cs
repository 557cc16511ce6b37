using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Analysis.Ranking;

/// <summary>
/// What would move a result: each fact that can be changed between drives is changed by one sensible step, by itself, and the result computed anew. No slopes, no
/// guesses: the figure is what comes of exactly that step.
/// </summary>
public static class WhatMatters
{
    /// <summary>The greatest move first; facts whose step moves nothing are left out. Empty where the result isn't computed.</summary>
    /// <param name="result">What shall move.</param>
    /// <param name="subject">What it is a result of.</param>
    /// <param name="system">Whose round figures the steps are.</param>
    public static ImmutableArray<Move> Of(IResult result, ISubject subject, DisplaySystem system, CancellationToken cancel = default)
    {
        if (result.Compute(subject) is not { IsComputed: true } node)
        {
            return [];
        }

        var moves = ImmutableArray.CreateBuilder<Move>();
        foreach (var fact in NumericFacts.Under(node))
        {
            cancel.ThrowIfCancellationRequested();
            if (StepOf(fact, system) is { } step && Best(result, subject, node.Value, fact, step) is { } move)
            {
                moves.Add(move);
            }
        }

        return [.. moves.OrderByDescending(move => Math.Abs(move.Difference))];
    }

    /// <summary>Null for a fact that is as it is, and for one that nobody has set.</summary>
    private static double? StepOf(NumericFact fact, DisplaySystem system) =>
        fact.Origin is ReadOrigin.Written or ReadOrigin.Varied or ReadOrigin.Solved
        && fact.Fact.Fact.Steps.FirstOrDefault(step => step.Role == fact.Fact.Role) is { } step
        // A tank's level may be said in litres, for which a share is no step.
        && (fact.Fact.Role != "level" || fact.Kind == QuantityKinds.Ratio)
            ? system == DisplaySystem.Us ? step.Us : step.Metric
            : null;

    /// <summary>The way that makes the result more, as one would read it; the other where this one leads nowhere.</summary>
    private static Move? Best(IResult result, ISubject subject, double now, NumericFact fact, double step)
    {
        var tried = Variation.Of(fact.Fact, fact.Value);
        return new[] { step, -step }.Where(change => IsSensible(fact, fact.Value + change))
            .Select(change => new Move(fact, change, subject.Study.With(tried.At(fact.Value + change)).ValueHere(result, subject) - now))
            .Where(move => !double.IsNaN(move.Difference) && !Limits.Same(now, now + move.Difference))
            .OrderByDescending(move => move.Difference > 0).ThenByDescending(move => Math.Abs(move.Difference)).FirstOrDefault();
    }

    private static bool IsSensible(NumericFact fact, double value)
    {
        var declared = fact.Fact.Fact;
        return fact.Fact.Role switch
        {
            "place" => true,
            "mass" => value > 0,
            "level" => value is >= 0 and <= 1,
            _ => (!declared.MustBePositive || value > 0) && (declared.Plausible is not { } range || (value >= range.Low && value <= range.High)),
        };
    }
}

/// <summary>One step of one fact, and what it does.</summary>
/// <param name="Fact">With its value now.</param>
/// <param name="Step">SI, with its sign; of a place, positive is rearward.</param>
/// <param name="Difference">SI: by how much the result is more then.</param>
public sealed record Move(NumericFact Fact, double Step, double Difference);

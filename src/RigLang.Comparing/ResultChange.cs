using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Tracking;

namespace RigLang.Comparing;

/// <summary>A result that is not what it was.</summary>
/// <param name="Pair">Whose result: the declaration.</param>
/// <param name="Part">The axle, leg or stop of it; empty for the declaration itself.</param>
/// <param name="Before">Null where there was no such part.</param>
/// <param name="After">Null where there is none any more.</param>
public sealed record ResultChange(DeclarationPair Pair, string Part, IResult Result, Node<double>? Before, Node<double>? After)
{
    /// <summary>What each changed input alone would have done, the greatest first; those that do nothing are left out.</summary>
    public ImmutableArray<Share> Because { get; init; } = [];

    /// <summary>After less before, in SI; NaN where one of them isn't computed.</summary>
    public double Difference => IsComputed(Before) && IsComputed(After) ? After!.Value - Before!.Value : double.NaN;

    /// <summary>What the changes do together beyond the sum of what each does alone, in SI; NaN where it can't be told.</summary>
    public double Together => Difference - Because.Sum(share => share.Difference);

    private static bool IsComputed(Node<double>? node) => node is { IsComputed: true };
}

/// <summary>The part that one changed input has in a result's change.</summary>
/// <param name="Difference">Made alone in the state before, it moves the result by so much (SI); NaN where alone it leaves no number.</param>
public sealed record Share(Change Change, double Difference);

/// <summary>A limit with what is on it, before and after.</summary>
public sealed record LimitChange(DeclarationPair Pair, RatingLine? Before, RatingLine? After)
{
    public string Title => (After ?? Before!).Rating.Title;

    /// <summary>It holds no more.</summary>
    public bool IsCrossed => After is { IsOver: true } && Before is not { IsOver: true };

    /// <summary>It was passed, and holds again.</summary>
    public bool IsMended => Before is { IsOver: true } && After is { IsOver: false };

    public bool IsMoved => Before is null || After is null || !(Same(Before.Room, After.Room) && Same(Before.Load.Value, After.Load.Value));

    private static bool Same(double one, double other) => (double.IsNaN(one) && double.IsNaN(other)) || Quantities.Limits.Same(one, other);
}

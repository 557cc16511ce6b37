using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Ratings;

/// <summary>A rating with what is on it.</summary>
/// <param name="Load">The load, computed or not.</param>
/// <param name="Limit">The limit as its author wrote it, or as computed from the line; null where it isn't known.</param>
/// <param name="LimitLine">The line that says it.</param>
public sealed record RatingLine(Rating Rating, Node<double> Load, Measure? Limit, Fact? LimitLine)
{
    /// <summary>How the limit was computed, where it isn't written as a quantity.</summary>
    public Node<double>? LimitNode { get; init; }

    /// <summary>Whether an estimate went into load or limit.</summary>
    public bool IsEstimated => Load.IsEstimated || LimitNode is { IsEstimated: true };

    /// <summary>Both are known.</summary>
    public bool IsKnown => Load.IsComputed && Limit is not null;

    /// <summary>Room to the limit, in SI; negative over it. NaN where either is unknown.</summary>
    public double Room => Limit is null || !Load.IsComputed ? double.NaN : Limit.Value - Load.Value;

    /// <summary>Load as a share of the limit; NaN where either is unknown.</summary>
    public double Use => Limit is null || !Load.IsComputed ? double.NaN : Load.Value / Limit.Value;

    public bool IsOver => Limit is not null && Load.IsComputed && Limits.Exceeds(Load.Value, Limit.Value);
}

/// <summary>The room to each rating of a rig, the least first; ratings of which one side is unknown come last.</summary>
public static class RatingTable
{
    // A dozen checks, the hover and the report ask for the same table of a study, which never changes.
    private static readonly ConditionalWeakTable<RigStudy, StrongBox<ImmutableArray<RatingLine>>> Tables = [];

    public static ImmutableArray<RatingLine> Of(RigStudy rig) => Tables.GetValue(rig, study => new StrongBox<ImmutableArray<RatingLine>>(Make(study))).Value;

    private static ImmutableArray<RatingLine> Make(RigStudy rig) =>
    [
        .. RigRatings.Of(rig).Select(LineOf).Where(IsListed)
            .OrderByDescending(line => line.IsKnown).ThenByDescending(line => line.Use),
    ];

    public static RatingLine LineOf(Rating rating)
    {
        var line = rating.Owner.Find(rating.Limit);
        var limit = rating.LimitResult?.Compute(rating.Subject);
        var measure = rating.LimitResult is null ? line?.MeasureOf(Signature.ValueRole) : limit is { IsComputed: true } ? InUnitOf(rating, limit.Value) : null;
        return new RatingLine(rating, rating.Load.Compute(rating.Subject)!, measure, line) { LimitNode = limit };
    }

    private static bool IsListed(RatingLine line) => line.Load.Applies && (line.Rating.IsCeilingOnly ? line.IsOver : line.Limit is not null || line.Rating.IsAskedFor);

    /// <summary>A computed limit in the unit in which the author gives the axle's own rating; else in kg.</summary>
    private static Measure InUnitOf(Rating rating, double limit)
    {
        var like = rating.Subject is AxleSubject axle ? axle.Axle.Find(axle.Facts.AxleRating)?.MeasureOf(Signature.ValueRole) : null;
        var unit = like?.Unit ?? rating.LimitResult!.Kind.Metric;
        return Measure.Of(rating.LimitResult!.Kind, unit.FromSi(limit), unit, 0);
    }
}

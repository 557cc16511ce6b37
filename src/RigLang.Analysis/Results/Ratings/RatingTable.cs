using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Ratings;

/// <summary>A rating with what is on it.</summary>
/// <param name="Load">The load, computed or not.</param>
/// <param name="Limit">The limit as its author wrote it; null where the line isn't there.</param>
/// <param name="LimitLine">The line that says it.</param>
public sealed record RatingLine(Rating Rating, Node<double> Load, Measure? Limit, Fact? LimitLine)
{
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
    public static ImmutableArray<RatingLine> Of(RigStudy rig) =>
    [
        .. RigRatings.Of(rig).Select(LineOf).Where(line => line.Load.Applies && (line.Limit is not null || line.Rating.Limit.Need == Need.ForVerdict))
            .OrderByDescending(line => line.IsKnown).ThenByDescending(line => line.Use),
    ];

    public static RatingLine LineOf(Rating rating)
    {
        var line = rating.Owner.Find(rating.Limit);
        return new RatingLine(rating, rating.Load.Compute(rating.Subject)!, line?.MeasureOf(Signature.ValueRole), line);
    }
}

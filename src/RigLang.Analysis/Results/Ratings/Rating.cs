using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Results.Ratings;

/// <summary>Something that a maker's plate limits: what is loaded, and the line that limits it.</summary>
/// <param name="Title">"Rear axle".</param>
/// <param name="Load">The result that must not be more.</param>
/// <param name="Subject">Whose result it is.</param>
/// <param name="Owner">The block that holds the limit.</param>
/// <param name="Limit">The fact that limits.</param>
/// <param name="Family">Which check reports it when it is passed.</param>
public sealed record Rating(string Title, IResult Load, ISubject Subject, Block Owner, FactDeclaration Limit, RatingFamily Family)
{
    /// <summary>What the limit comes to, where the line doesn't say it as a quantity: a tyre's load index at its pressure.</summary>
    public IResult? LimitResult { get; init; }

    /// <summary>Whether it is listed, as unknown, while nobody has written the limit.</summary>
    public bool IsAskedFor { get; init; } = Limit.Need == Need.ForVerdict;

    /// <summary>
    /// True for the higher of two ratings where the lower one applies and isn't written. It is no room that one could use, so it is told of only when it is passed.
    /// </summary>
    public bool IsCeilingOnly { get; init; }

    /// <summary>Whether what is on it counts in <c>rating-use</c>. Tyres have <c>tyre-use</c>; the D-value holds for the papers' masses, not for what is loaded.</summary>
    public bool CountsInUse => Family is not (RatingFamily.Tyre or RatingFamily.DValue);
}

/// <summary>What a rating is about; each has a check of its own.</summary>
public enum RatingFamily
{
    Axle,
    Gross,
    Combined,
    TrailerGross,
    Towing,
    Tongue,
    Ball,
    Cargo,
    Roof,
    Mount,
    Bars,
    Tyre,
    DValue,
}

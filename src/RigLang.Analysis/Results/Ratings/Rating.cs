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
public sealed record Rating(string Title, IResult Load, ISubject Subject, Block Owner, FactDeclaration Limit, RatingFamily Family);

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
}

namespace RigLang.Quantities;

/// <summary>A number and the unit behind it, as written; no unit is null.</summary>
public readonly record struct QuantityPart(string Number, string? Unit);

/// <summary>One term of a sum as written: "- 2 x 17 kg", "33 ft 4 in".</summary>
/// <param name="Negative">A minus stands before the term (between terms; a number's own sign belongs to the number).</param>
/// <param name="Count">The number before "x", or null.</param>
/// <param name="Parts">One part, or several of a compound, largest first.</param>
public sealed record QuantityTerm(bool Negative, string? Count, IReadOnlyList<QuantityPart> Parts);

namespace RigLang.Quantities;

/// <summary>A term as understood.</summary>
/// <param name="Value">In SI, count and sign included.</param>
/// <param name="Units">One, or those of a compound.</param>
/// <param name="Decimals">Of the last part.</param>
/// <param name="HasCount">It was "2 x …".</param>
internal sealed record ReadTerm(double Value, IReadOnlyList<Unit> Units, int Decimals, bool HasCount);

/// <summary>A part as understood.</summary>
internal readonly record struct ReadPart(double Number, NumberForm Form, Unit Unit);

namespace RigLang.Syntax.Tree;

/// <summary>
/// A tyre's size as its sidewall says it. Metric sizes have <see cref="WidthMillimetres"/> and <see cref="AspectPercent"/>; flotation sizes
/// (<c>31x10.5R15LT</c>) have <see cref="DiameterInches"/> and <see cref="WidthInches"/>.
/// </summary>
/// <param name="Prefix"><c>P</c>, <c>LT</c>, <c>ST</c>, <c>T</c>, or empty.</param>
/// <param name="Construction"><c>R</c>, <c>ZR</c>, <c>D</c>, <c>B</c> or <c>-</c>.</param>
/// <param name="Suffix"><c>C</c>, <c>LT</c>, or empty.</param>
public sealed record TyreSize(
    string Prefix, double? WidthMillimetres, double? AspectPercent, double? DiameterInches, double? WidthInches, string Construction, double RimInches, string Suffix);

/// <summary>The service description: load index single (and dual), speed symbol: <c>104/102R</c>.</summary>
public sealed record TyreService(int LoadIndex, int? DualLoadIndex, string? SpeedSymbol);

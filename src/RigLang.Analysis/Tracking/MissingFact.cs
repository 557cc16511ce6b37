using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tracking;

/// <summary>The first fact that a computation couldn't do without and didn't find.</summary>
/// <param name="ForEstimate">What its estimate would have needed; null where there is no estimate.</param>
public sealed record MissingFact(Block Block, FactDeclaration Fact, MissingFact? ForEstimate = null)
{
    /// <summary>"`wheelbase` of vehicle van"; "a vehicle" where the whole block isn't there.</summary>
    public string Words => Block.Path.StartsWith(Study.NoSuchPart, StringComparison.Ordinal)
        ? Block.Path[1..]
        : $"`{Fact.Keyword}`{OwnerWords.Of(Block)}{(ForEstimate is { } other ? $", or `{other.Fact.Keyword}` to estimate it" : "")}";
}

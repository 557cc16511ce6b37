using RigLang.Model.Binding;
using RigLang.Model.Reading;

namespace RigLang.Model.Declaring;

/// <summary>
/// What stands in for a fact that nobody wrote. It reads other facts through the same reader as every result, so it can be asked why, and everything
/// that rests on it is marked <i>estimated</i>.
/// </summary>
/// <param name="Words">How it is made, for hover and reference page: "0.84 × width × height".</param>
/// <param name="Source">Where that comes from.</param>
/// <param name="Value">SI; NaN where the facts it needs are missing too.</param>
/// <param name="IsDefault">True for what the language itself lays down (two tyres to an axle): nothing is guessed, so nothing is marked as estimated.</param>
/// <param name="Spread">Half-width as a share of the value that holds the truth 19 times out of 20; null where nobody knows.</param>
public sealed record Estimate(string Words, string Source, Func<IFactReader, Block, double> Value, double? Spread = null, bool IsDefault = false)
{
    /// <summary>The same figure for everybody.</summary>
    public static Estimate Constant(double value, string words, string source, double? spread = null) => new(words, source, (_, _) => value, spread);

    /// <summary>What a missing line means by the language's own rule.</summary>
    public static Estimate Default(double value, string words) => new(words, "what no line means", (_, _) => value, IsDefault: true);
}

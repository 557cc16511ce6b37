using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Model.Reading;

/// <summary>
/// How estimates and results read facts. Each read is noted, so a number can be asked why, and kept while what it read is unchanged. A read that finds
/// nothing gives NaN or null and is noted as missing; whatever is computed from it is thrown away and reported as <i>not computed: needs …</i>.
/// </summary>
public interface IFactReader
{
    /// <summary>A quantity in SI: as written, else the practice's assumption, else the documented estimate, else NaN and noted as missing.</summary>
    double Quantity(Block block, FactDeclaration fact);

    /// <summary>The same, but its absence doesn't make the result missing; null then.</summary>
    double? QuantityIfKnown(Block block, FactDeclaration fact);

    /// <summary>A choice as written, else null and noted as missing.</summary>
    string? Word(Block block, FactDeclaration fact);

    /// <summary>A choice as written, or null; its absence is no miss.</summary>
    string? WordIfKnown(Block block, FactDeclaration fact);

    /// <summary>The line itself, for facts with several values; null and noted as missing when it isn't written.</summary>
    Fact? Line(Block block, FactDeclaration fact);

    /// <summary>The line itself, or null; its absence is no miss.</summary>
    Fact? LineIfWritten(Block block, FactDeclaration fact);

    /// <summary>Every line with this keyword, in file order; none is no miss.</summary>
    IReadOnlyList<Fact> Lines(Block block, FactDeclaration fact);

    /// <summary>A figure that is no rig's own (friction, reaction time): the practice's assumption, else the documented one, else NaN and missing.</summary>
    double Figure(FactDeclaration figure);

    /// <summary>Notes that the result put a documented stand-in in place of a fact that isn't written, so that it is marked as estimated.</summary>
    void StandIn(Block block, FactDeclaration fact);
}

using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Unused;

/// <summary>The checks of what is left over, or left open.</summary>
public static class UnusedChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new UnusedDeclaration(), new OpenQuestion(),
    ];
}

using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Braking;

/// <summary>The checks of how a rig stops and is held back.</summary>
public static class BrakingChecks
{
    public static ImmutableArray<Check> All { get; } = [new LongStop(), new BrakesHot(), new FullOnDescent()];
}

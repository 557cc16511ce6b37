namespace RigLang.Fuzzing.Targets;

/// <summary>Every part that is fuzzed.</summary>
internal static class FuzzTargets
{
    public static IReadOnlyList<IFuzzTarget> All { get; } = [new LinesTarget(), new CheckTarget(), new FormatTarget(), new TrackTarget(), new FramingTarget()];

    public static IFuzzTarget Find(string name) =>
        All.FirstOrDefault(target => target.Name == name)
        ?? throw new ArgumentException($"There is no target '{name}'. The targets are: {string.Join(", ", All.Select(target => target.Name))}.", nameof(name));
}

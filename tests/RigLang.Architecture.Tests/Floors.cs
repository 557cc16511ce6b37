using System.Reflection;

namespace RigLang.Architecture.Tests;

/// <summary>The floors from the ground up, as DEVELOPERS.md lists them.</summary>
internal static class Floors
{
    public static IReadOnlyList<string> All { get; } =
    [
        "RigLang.Mechanics", "RigLang.Syntax", "RigLang.Quantities", "RigLang.Model", "RigLang.Analysis", "RigLang.Comparing", "RigLang.Drawing", "RigLang.Editing", "RigLang.LanguageServer", "RigLang.Cli",
    ];

    /// <summary>The floors that use none of ours.</summary>
    public static IReadOnlyList<string> Ground { get; } = ["RigLang.Mechanics", "RigLang.Syntax", "RigLang.Quantities"];

    /// <summary>Those without clock, console and file system.</summary>
    public static IEnumerable<string> Core => Existing.TakeWhile(floor => floor != "RigLang.LanguageServer");

    /// <summary>Those that are built so far.</summary>
    public static IReadOnlyList<string> Existing { get; } = [.. All.Where(floor => File.Exists(Path.Combine(Source.Root, $"src/{floor}/{floor}.csproj")))];

    public static Assembly Load(string floor) => Assembly.Load(floor == "RigLang.Cli" ? "riglang" : floor);

    public static bool Above(string floor, string other) => Place(floor) > Place(other);

    private static int Place(string floor) => All.ToList().IndexOf(floor);
}

using System.Collections.Immutable;

namespace RigLang.Syntax.Reading;

/// <summary>The words that can stand in the first column, and other words for them that people try.</summary>
public static class Kinds
{
    /// <summary>The kinds of declaration, in the order in which a newcomer writes them.</summary>
    public static ImmutableArray<string> All { get; } = ["vehicle", "trailer", "hitch", "load", "rig", "trip", "weighing", "run", "practice"];

    public static bool IsKind(string word) => word is "vehicle" or "trailer" or "hitch" or "load" or "rig" or "trip" or "weighing" or "run" or "practice";

    /// <summary>Words that open a block and stand nowhere else: their indent is one level, whatever stands above.</summary>
    public static bool OpensBlock(string word) => word is "axle" or "aboard" or "electric" or "combustion" or "on" or "leg" or "stop" or "pass";

    /// <summary>The kind that was meant by an unknown word that opens something; null if it looks like a fact whose indent was forgotten.</summary>
    public static string? Meant(string word)
    {
        var lower = word.ToLowerInvariant();
        return IsKind(lower) ? lower : Synonym(lower) ?? Spelling.Nearest(lower, All, Math.Clamp(lower.Length / 3, 1, 2));
    }

    private static string? Synonym(string word) => word switch
    {
        "car" or "truck" or "vehicles" or "tow-vehicle" or "tow-car" => "vehicle",
        "caravan" or "trailers" or "camper" or "towed" => "trailer",
        "combination" or "train" => "rig",
        "journey" or "route" or "tour" => "trip",
        "cargo" => "load",
        "weigh" or "weigh-in" => "weighing",
        _ => null,
    };
}

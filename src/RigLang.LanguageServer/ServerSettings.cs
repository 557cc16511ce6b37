using System.Text.Json;

namespace RigLang.LanguageServer;

/// <summary>What a person sets in the editor, under <c>riglang</c>.</summary>
/// <param name="UnitSystem"><c>unitSystem</c>: which units results are shown in.</param>
/// <param name="Hints"><c>hints</c>: whether computed values are shown behind the lines.</param>
public sealed record ServerSettings(UnitSystem UnitSystem = UnitSystem.AsWritten, bool Hints = true)
{
    internal const string Section = "riglang";

    /// <summary>Reads <c>{ unitSystem, hints }</c>, alone or under <c>riglang</c>. What is missing or not understood stays as it was.</summary>
    internal static ServerSettings Read(JsonElement? json, ServerSettings before)
    {
        if (json is not { ValueKind: JsonValueKind.Object } settings)
        {
            return before;
        }

        if (settings.TryGetProperty(Section, out var section) && section.ValueKind == JsonValueKind.Object)
        {
            settings = section;
        }

        var unitSystem = settings.TryGetProperty("unitSystem", out var named) && named.ValueKind == JsonValueKind.String
            ? ReadUnitSystem(named.GetString()!) ?? before.UnitSystem
            : before.UnitSystem;
        var hints = settings.TryGetProperty("hints", out var flag) && flag.ValueKind is JsonValueKind.True or JsonValueKind.False
            ? flag.ValueKind == JsonValueKind.True
            : before.Hints;
        return new ServerSettings(unitSystem, hints);
    }

    private static UnitSystem? ReadUnitSystem(string name) => name switch
    {
        "metric" => UnitSystem.Metric,
        "us" => UnitSystem.Us,
        "asWritten" => UnitSystem.AsWritten,
        _ => null,
    };
}

/// <summary>Which units results are shown in.</summary>
public enum UnitSystem
{
    /// <summary>The units the author used.</summary>
    AsWritten,
    Metric,
    Us,
}

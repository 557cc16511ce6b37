using System.Text.Json;
using RigLang.LanguageServer.Client;

namespace RigLang.LanguageServer;

/// <summary>What a person sets in the editor, under <c>riglang</c>.</summary>
/// <param name="UnitSystem"><c>unitSystem</c>: which units results are shown in.</param>
/// <param name="Hints"><c>hints</c>: whether computed values are shown behind the lines.</param>
/// <param name="Practice"><c>practice</c>: the practice of rigs that name none; null for none.</param>
public sealed record ServerSettings(UnitSystem UnitSystem = UnitSystem.AsWritten, bool Hints = true, string? Practice = null)
{
    /// <summary><c>severity</c>: how serious findings of some checks are shown.</summary>
    public SeverityChoices Severities { get; init; } = SeverityChoices.None;

    internal const string Section = "riglang";

    /// <summary>Reads <c>{ unitSystem, hints, practice, severity }</c>, alone or under <c>riglang</c>. What is missing or not understood stays as it was.</summary>
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
        var practice = !settings.TryGetProperty("practice", out var wished) ? before.Practice
            : wished.ValueKind == JsonValueKind.String ? (string.IsNullOrWhiteSpace(wished.GetString()) ? null : wished.GetString())
            : wished.ValueKind == JsonValueKind.Null ? null
            : before.Practice;
        return new ServerSettings(unitSystem, hints, practice)
        {
            Severities = settings.TryGetProperty("severity", out var severity) && severity.ValueKind == JsonValueKind.Object ? SeverityChoices.Read(severity) : before.Severities,
        };
    }

    /// <summary><c>diagnostics: "pull"</c>, read once at the start.</summary>
    internal static bool WantsPulledDiagnostics(JsonElement? json) => json is { } given && new[] { "diagnostics", $"{Section}.diagnostics" }.Any(path => new MemberReader(given).Text(path) == "pull");

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

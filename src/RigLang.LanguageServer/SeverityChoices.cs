using System.Collections.Immutable;
using System.Text.Json;
using RigLang.Syntax.Checks;

namespace RigLang.LanguageServer;

/// <summary>How serious findings of some checks are shown, as a person has set it. Two with the same choices are equal.</summary>
public sealed class SeverityChoices : IEquatable<SeverityChoices>
{
    private SeverityChoices(ImmutableDictionary<string, Severity?> byCheck) => ByCheck = byCheck;

    /// <summary>Every check as it is declared.</summary>
    public static SeverityChoices None { get; } = new(ImmutableDictionary<string, Severity?>.Empty);

    /// <summary>By slug or code; null for findings that aren't to be shown.</summary>
    public ImmutableDictionary<string, Severity?> ByCheck { get; }

    /// <summary>Reads <c>{ "tongue-below-usual": "note", "RL118": "off" }</c>. What isn't understood is left out.</summary>
    internal static SeverityChoices Read(JsonElement json)
    {
        var choices = ImmutableDictionary.CreateBuilder<string, Severity?>(StringComparer.Ordinal);
        foreach (var choice in json.EnumerateObject())
        {
            if (choice.Value.ValueKind == JsonValueKind.String && Find(choice.Value.GetString()!, out var severity))
            {
                choices[choice.Name] = severity;
            }
        }

        return new SeverityChoices(choices.ToImmutable());
    }

    public bool Equals(SeverityChoices? other) =>
        other is not null && ByCheck.Count == other.ByCheck.Count && ByCheck.All(choice => other.ByCheck.TryGetValue(choice.Key, out var severity) && severity == choice.Value);

    public override bool Equals(object? obj) => Equals(obj as SeverityChoices);

    public override int GetHashCode() => ByCheck.Count;

    private static bool Find(string word, out Severity? severity)
    {
        severity = word switch
        {
            "error" => Severity.Error,
            "warning" => Severity.Warning,
            "note" => Severity.Note,
            _ => null,
        };
        return severity is not null || word == "off";
    }
}

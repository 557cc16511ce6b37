using System.Text.Json;

namespace RigLang.LanguageServer.Client;

/// <summary>Looks values up in what a client sent, by their dotted path. What is absent or of another form is nothing.</summary>
internal readonly struct MemberReader(JsonElement root)
{
    private readonly JsonElement _root = root;

    internal bool Has(string path) => Find(path) is { ValueKind: JsonValueKind.Object };

    internal bool Flag(string path) => Find(path) is { ValueKind: JsonValueKind.True };

    internal string? Text(string path) => Find(path) is { ValueKind: JsonValueKind.String } found ? found.GetString() : null;

    internal int? Number(string path) => Find(path) is { ValueKind: JsonValueKind.Number } found && found.TryGetInt32(out var number) ? number : null;

    internal bool Lists(string path, string value) =>
        Find(path) is { ValueKind: JsonValueKind.Array } list && list.EnumerateArray().Any(e => e.ValueKind == JsonValueKind.String && e.ValueEquals(value));

    internal bool Lists(string path, int value) =>
        Find(path) is { ValueKind: JsonValueKind.Array } list
        && list.EnumerateArray().Any(e => e.ValueKind == JsonValueKind.Number && e.TryGetInt32(out var number) && number == value);

    private JsonElement? Find(string path)
    {
        var here = _root;
        foreach (var step in path.Split('.'))
        {
            if (here.ValueKind != JsonValueKind.Object || !here.TryGetProperty(step, out here))
            {
                return null;
            }
        }

        return here;
    }
}

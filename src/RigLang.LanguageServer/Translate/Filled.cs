using System.Text.Json;
using System.Text.Json.Nodes;
using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Wire;

namespace RigLang.LanguageServer.Translate;

/// <summary>An object of the client's with one member put in: what a "resolve" request answers. All else in it stays as the client sent it.</summary>
internal static class Filled
{
    internal static JsonElement With(JsonElement item, string member, MarkupContent value) =>
        With(item, member, JsonSerializer.SerializeToNode(value, LspJson.Default.MarkupContent));

    internal static JsonElement With(JsonElement item, string member, JsonNode? value)
    {
        var filled = JsonObject.Create(item) ?? [];
        filled[member] = value;
        return JsonSerializer.SerializeToElement(filled, LspJson.Default.JsonObject);
    }
}

using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Text;
using System.Text.Json;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace RigLang.LanguageServer.Wire;

/// <summary>
/// Reads and writes message bodies. A body that isn't a message is told apart from a lost connection by <see cref="UnreadableMessageException"/>,
/// so that it can be answered and the next one read.
/// </summary>
internal sealed class LspFormatter : SystemTextJsonFormatter, IJsonRpcMessageTextFormatter
{
    /// <summary>Vouches for the base class, which may reflect: every type that is sent or received is in <see cref="LspJson"/>.</summary>
    [UnconditionalSuppressMessage("Trimming", "IL2026", Justification = "Every type on the wire is in LspJson.")]
    [UnconditionalSuppressMessage("AOT", "IL3050", Justification = "Every type on the wire is in LspJson.")]
    internal LspFormatter() => JsonSerializerOptions = new JsonSerializerOptions(LspJson.Default.Options) { TypeInfoResolver = LspJson.Default };

    JsonRpcMessage IJsonRpcMessageTextFormatter.Deserialize(ReadOnlySequence<byte> contentBuffer, Encoding encoding)
    {
        try
        {
            return Deserialize(contentBuffer, encoding);
        }
        catch (Exception problem) when (problem is JsonException or InvalidOperationException or KeyNotFoundException or FormatException or NotSupportedException)
        {
            throw Unreadable(contentBuffer, problem);
        }
    }

    private static UnreadableMessageException Unreadable(ReadOnlySequence<byte> body, Exception problem)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            return new UnreadableMessageException(ErrorCodes.InvalidRequest, "not a JSON-RPC message: " + Reason(document.RootElement), IdOf(document.RootElement), problem);
        }
        catch (JsonException notJson)
        {
            return new UnreadableMessageException(ErrorCodes.ParseError, "not JSON: " + notJson.Message, RequestId.Null, notJson);
        }
    }

    private static string Reason(JsonElement root) => root.ValueKind switch
    {
        JsonValueKind.Array => "batches are not part of the Language Server Protocol",
        JsonValueKind.Object when root.TryGetProperty("method", out _) => "params must be an object or an array, method a text, id a number or a text",
        JsonValueKind.Object => "an object with method, result or error is expected",
        _ => "an object is expected",
    };

    private static RequestId IdOf(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("id", out var id))
        {
            return RequestId.Null;
        }

        return id.ValueKind switch
        {
            JsonValueKind.Number when id.TryGetInt64(out var number) => new RequestId(number),
            JsonValueKind.String => new RequestId(id.GetString()),
            _ => RequestId.Null,
        };
    }
}

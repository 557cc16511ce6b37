using System.Text.Json.Serialization;

namespace RigLang.LanguageServer.Protocol;

internal sealed record WorkDoneProgressCreateParams(string Token);

internal sealed record ProgressParams(string Token, WorkDoneProgress Value);

/// <param name="Kind">"begin", "report" or "end".</param>
internal sealed record WorkDoneProgress(string Kind, string? Title = null, string? Message = null, uint? Percentage = null);

internal sealed record SetTraceParams(string Value);

internal sealed record LogTraceParams(string Message, [property: JsonPropertyName("verbose")] string? More = null);

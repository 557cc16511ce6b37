using StreamJsonRpc;

namespace RigLang.LanguageServer.Wire;

/// <summary>A message arrived whole but says nothing that can be carried out. The connection is sound.</summary>
internal sealed class UnreadableMessageException(int code, string message, RequestId id, Exception inner) : Exception(message, inner)
{
    internal int Code => code;

    /// <summary>The request's id where it could be made out, else null.</summary>
    internal RequestId Id => id;
}

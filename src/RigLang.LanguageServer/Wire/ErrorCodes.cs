namespace RigLang.LanguageServer.Wire;

/// <summary>The error codes of JSON-RPC and of the Language Server Protocol that are answered here.</summary>
internal static class ErrorCodes
{
    internal const int ParseError = -32700;
    internal const int InvalidRequest = -32600;
    internal const int InvalidParams = -32602;
    internal const int InternalError = -32603;
    internal const int ServerNotInitialized = -32002;
    internal const int ServerCancelled = -32802;
    internal const int RequestFailed = -32803;
    internal const int ContentModified = -32801;
}

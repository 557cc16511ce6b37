using System.Text.Json;
using RigLang.LanguageServer.Client;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace RigLang.LanguageServer.Wire;

/// <summary>The JSON-RPC connection with the protocol's rules laid over it: which message may come when, and what a failure looks like from outside.</summary>
internal sealed class LspConnection : JsonRpc
{
    private readonly Lifecycle _lifecycle;
    private readonly AnswersOwed _owed;
    private readonly ClientLog _log;

    internal LspConnection(IJsonRpcMessageHandler handler, Lifecycle lifecycle, AnswersOwed owed, ClientLog log)
        : base(handler)
    {
        (_lifecycle, _owed, _log) = (lifecycle, owed, log);
        CancelLocallyInvokedMethodsWhenConnectionIsClosed = true;
        TraceSource.Listeners.Clear();
    }

    protected override ValueTask<JsonRpcMessage> DispatchRequestAsync(JsonRpcRequest request, TargetMethod targetMethod, CancellationToken cancellationToken)
    {
        return _lifecycle.Refuse(request.Method!) is var (code, message)
            ? new(new JsonRpcError { RequestId = request.RequestId, Error = Detail(code, message) })
            : base.DispatchRequestAsync(request, targetMethod, cancellationToken);
    }

    protected override void OnResponseSent(JsonRpcMessage response)
    {
        base.OnResponseSent(response);
        _owed.Settle();
    }

    protected override JsonRpcError.ErrorDetail CreateErrorDetails(JsonRpcRequest request, Exception exception)
    {
        switch (exception)
        {
            case LocalRpcException chosen:
                return Detail(chosen.ErrorCode, chosen.Message);
            case JsonException unfit:
                var problem = $"{request.Method}: the parameters don't fit the protocol: {WithoutNamespaces(unfit.Message)}";
                _log.Warning(problem);
                return Detail(ErrorCodes.InvalidParams, problem);
            default:
                _log.Failure(request.Method!, exception);
                return Detail(ErrorCodes.InternalError, $"{request.Method} failed; the log says why. Other requests are not affected.");
        }
    }

    /// <summary>The reader names our records in full; their last part is the protocol's own name.</summary>
    private static string WithoutNamespaces(string message) => message.Replace(typeof(Protocol.Position).Namespace + ".", "", StringComparison.Ordinal);

    private static JsonRpcError.ErrorDetail Detail(int code, string message) => new() { Code = (JsonRpcErrorCode)code, Message = message };
}

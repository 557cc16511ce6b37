using System.Diagnostics;
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
    private readonly ClientTrace _trace;

    internal LspConnection(IJsonRpcMessageHandler handler, Lifecycle lifecycle, AnswersOwed owed, ClientLog log, ClientTrace trace)
        : base(handler)
    {
        (_lifecycle, _owed, _log, _trace) = (lifecycle, owed, log, trace);
        CancelLocallyInvokedMethodsWhenConnectionIsClosed = true;
        TraceSource.Listeners.Clear();
    }

    protected override ValueTask<JsonRpcMessage> DispatchRequestAsync(JsonRpcRequest request, TargetMethod targetMethod, CancellationToken cancellationToken)
    {
        return _lifecycle.Refuse(request.Method!) is var (code, message)
            ? new(new JsonRpcError { RequestId = request.RequestId, Error = Detail(code, message) })
            : TracedAsync(request, base.DispatchRequestAsync(request, targetMethod, cancellationToken));
    }

    /// <summary>Whether to trace is asked at the end: a message that turns it on is carried out before those behind it, but not before they are read.</summary>
    private async ValueTask<JsonRpcMessage> TracedAsync(JsonRpcRequest request, ValueTask<JsonRpcMessage> dispatched)
    {
        var started = Stopwatch.GetTimestamp();
        var answer = await dispatched.ConfigureAwait(false);
        if (_trace.IsOn)
        {
            _trace.Done(request.Method!, request.IsResponseExpected, started, (answer as JsonRpcError)?.Error is { } error ? $"{(int)error.Code}: {error.Message}" : null);
        }

        return answer;
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
                return new() { Code = (JsonRpcErrorCode)chosen.ErrorCode, Message = chosen.Message, Data = chosen.ErrorData };
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

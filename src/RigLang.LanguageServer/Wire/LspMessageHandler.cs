using System.IO.Pipelines;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace RigLang.LanguageServer.Wire;

/// <summary>
/// Frames messages by their headers. Answers an unreadable message itself and goes on; at the end of the input lets what was asked be answered
/// before it reports the end.
/// </summary>
internal sealed class LspMessageHandler(PipeWriter writer, PipeReader reader, IJsonRpcMessageFormatter formatter, AnswersOwed owed)
    : HeaderDelimitedMessageHandler(writer, reader, formatter)
{
    protected override async ValueTask<JsonRpcMessage?> ReadCoreAsync(CancellationToken cancellationToken)
    {
        while (true)
        {
            try
            {
                var message = await base.ReadCoreAsync(cancellationToken).ConfigureAwait(false);
                switch (message)
                {
                    case JsonRpcRequest { IsResponseExpected: true }:
                        owed.Add();
                        break;
                    case null:
                        await owed.SettledAsync(LanguageServerHost.Patience).ConfigureAwait(false);
                        break;
                }

                return message;
            }
            catch (UnreadableMessageException unreadable)
            {
                var detail = new JsonRpcError.ErrorDetail { Code = (JsonRpcErrorCode)unreadable.Code, Message = unreadable.Message };
                await WriteAsync(new JsonRpcError { RequestId = unreadable.Id, Error = detail }, cancellationToken).ConfigureAwait(false);
            }
            catch (ArgumentOutOfRangeException)
            {
                // Content-Length is 0 or less: there is no body, so the next header follows.
                var detail = new JsonRpcError.ErrorDetail { Code = JsonRpcErrorCode.ParseError, Message = "a message without a body" };
                await WriteAsync(new JsonRpcError { RequestId = RequestId.Null, Error = detail }, cancellationToken).ConfigureAwait(false);
            }
        }
    }
}

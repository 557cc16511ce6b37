using PolyType;
using RigLang.LanguageServer.Client;
using RigLang.LanguageServer.Protocol;
using StreamJsonRpc;

namespace RigLang.LanguageServer.Handlers;

/// <summary>From <c>initialize</c> to <c>exit</c>. <c>initialize</c> is answered from what the client says alone: no file is read and no workspace made for it.</summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class LifecycleHandler(Session session)
{
    [JsonRpcMethod("initialize", UseSingleObjectParameterDeserialization = true)]
    public InitializeResult Initialize(InitializeParams client)
    {
        session.Features = ClientFeatures.Of(client.Capabilities);
        session.Folders.Begin(client);
        if (client.ProcessId is { } process)
        {
            _ = session.FollowAsync(process);
        }

        session.Trace.Set(client.Trace);
        session.Begin(client.InitializationOptions);
        return new InitializeResult(Offer.To(session.Features, session.IsPulled), new ServerInfo("riglang", session.Options.Version));
    }

    [JsonRpcMethod("initialized")]
    public void Initialized()
    {
        session.Open();
        _ = session.RegisterAsync();
    }

    [JsonRpcMethod("$/setTrace", UseSingleObjectParameterDeserialization = true)]
    public void SetTrace(SetTraceParams trace) => session.Trace.Set(trace.Value);

    /// <summary>The last set that was begun is sent before the answer, and none after it.</summary>
    [JsonRpcMethod("shutdown")]
    public async Task<object?> ShutdownAsync()
    {
        session.Writes.Close();
        await session.Publisher.DisposeAsync().ConfigureAwait(false);
        return null;
    }

    [JsonRpcMethod("exit")]
    public void Exit() => session.RequestExit();
}

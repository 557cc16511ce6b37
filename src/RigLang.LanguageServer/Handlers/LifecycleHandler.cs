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

        session.Begin(client.InitializationOptions);
        return new InitializeResult(Offer.To(session.Features), new ServerInfo("riglang", session.Options.Version));
    }

    [JsonRpcMethod("initialized")]
    public void Initialized()
    {
        session.Open();
        _ = session.RegisterAsync();
    }

    /// <summary>The last set that was begun is sent before the answer, and none after it.</summary>
    [JsonRpcMethod("shutdown")]
    public async Task<object?> ShutdownAsync()
    {
        await session.Publisher.DisposeAsync().ConfigureAwait(false);
        return null;
    }

    [JsonRpcMethod("exit")]
    public void Exit() => session.RequestExit();
}

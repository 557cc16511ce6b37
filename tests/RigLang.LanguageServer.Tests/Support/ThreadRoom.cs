using System.Runtime.CompilerServices;

namespace RigLang.LanguageServer.Tests.Support;

internal static class ThreadRoom
{
    /// <summary>Tests hold server threads at gates on purpose, several tests at a time; the pool must not make the rest wait for new threads.</summary>
    [ModuleInitializer]
    internal static void Make() => ThreadPool.SetMinThreads(64, 64);
}

using System.Collections.Immutable;

namespace RigLang.LanguageServer.Documents;

/// <summary>The reports that a client has looked at lately, to tell it when they are to be asked for again.</summary>
internal sealed class AskedReports
{
    private const int Most = 8;
    private ImmutableArray<string> _uris = [];

    internal ImmutableArray<string> Uris => _uris;

    internal void Add(string uri) => ImmutableInterlocked.Update(ref _uris, static (uris, uri) => uris.Contains(uri) ? uris : [.. uris.TakeLast(Most - 1), uri], uri);
}

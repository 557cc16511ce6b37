using System.Collections.Immutable;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Documents;

/// <summary>What the client has open: its own spelling of the URI and the version its text has. Immutable; belongs to one snapshot.</summary>
internal sealed record OpenDocuments(ImmutableDictionary<FileId, OpenDocument> Files)
{
    internal static OpenDocuments None { get; } = new(ImmutableDictionary<FileId, OpenDocument>.Empty);

    internal bool Contains(FileId file) => Files.ContainsKey(file);

    internal OpenDocuments With(FileId file, string uri, int version) => new(Files.SetItem(file, new OpenDocument(uri, version)));

    internal OpenDocuments Without(FileId file) => new(Files.Remove(file));

    /// <summary>The client's own spelling where it has one.</summary>
    internal string UriOf(FileId file) => Files.TryGetValue(file, out var document) ? document.Uri : FileUri.Encode(file);

    /// <summary>Null for a file that isn't open.</summary>
    internal int? VersionOf(FileId file) => Files.TryGetValue(file, out var document) ? document.Version : null;
}

/// <summary>One open document.</summary>
internal readonly record struct OpenDocument(string Uri, int Version);

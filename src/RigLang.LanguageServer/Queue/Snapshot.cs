using RigLang.Editing;
using RigLang.LanguageServer.Documents;

namespace RigLang.LanguageServer.Queue;

/// <summary>One state of everything, never changed: what is answered, and what the client has open at that moment.</summary>
internal sealed record Snapshot(ILanguageService Service, OpenDocuments Documents);

using RigLang.LanguageServer.Protocol;
using RigLang.LanguageServer.Translate;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Publishing;

/// <summary>What the client was last told about each file.</summary>
internal sealed class SentSets
{
    private readonly Dictionary<FileId, PublishDiagnosticsParams> _sent = [];

    /// <summary>
    /// What has to be sent so that the client knows this set: nothing when it already does and the file wasn't edited. When the file was known by
    /// another URI before, that one is emptied first.
    /// </summary>
    internal PublishDiagnosticsParams[] Exchange(FileId file, PublishDiagnosticsParams now, bool edited)
    {
        var known = _sent.TryGetValue(file, out var before);
        var moved = known && before!.Uri != now.Uri && before.Diagnostics.Length > 0;
        var same = known && before!.Uri == now.Uri ? DiagnosticComparer.SameSet(before.Diagnostics, now.Diagnostics) : now.Diagnostics.Length == 0;
        if (same && !edited && !moved)
        {
            return [];
        }

        if (now.Diagnostics.Length == 0)
        {
            _sent.Remove(file);
        }
        else
        {
            _sent[file] = now;
        }

        return moved ? [new PublishDiagnosticsParams(before!.Uri, []), now] : [now];
    }
}

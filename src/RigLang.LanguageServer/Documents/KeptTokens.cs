using System.Globalization;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Documents;

/// <summary>The tokens that each file was last told to have, so that the next answer can be what changed. A few files only: a client asks for what it shows.</summary>
internal sealed class KeptTokens
{
    private const int Most = 32;
    private readonly Lock _lock = new();
    private readonly LinkedList<(FileId File, string Id, uint[] Data)> _kept = [];
    private long _last;

    /// <summary>Keeps them under a new name, in place of those of the file before.</summary>
    /// <returns>Null for none: there is nothing to tell changes from.</returns>
    internal string? Keep(FileId file, uint[] data)
    {
        if (data.Length == 0)
        {
            return null;
        }

        lock (_lock)
        {
            var id = (++_last).ToString(CultureInfo.InvariantCulture);
            if (NodeOf(file) is { } node)
            {
                _kept.Remove(node);
            }

            _kept.AddFirst((file, id, data));
            if (_kept.Count > Most)
            {
                _kept.RemoveLast();
            }

            return id;
        }
    }

    /// <summary>Null when they aren't kept any more.</summary>
    internal uint[]? Find(FileId file, string id)
    {
        lock (_lock)
        {
            return NodeOf(file) is { Value: var kept } && kept.Id == id ? kept.Data : null;
        }
    }

    private LinkedListNode<(FileId File, string Id, uint[] Data)>? NodeOf(FileId file)
    {
        var node = _kept.First;
        while (node is not null && node.Value.File != file)
        {
            node = node.Next;
        }

        return node;
    }
}

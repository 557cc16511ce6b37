using System.Collections.Immutable;
using RigLang.Editing;

namespace RigLang.LanguageServer.Documents;

/// <summary>
/// The last few lists of completions, whose documentation is asked for entry by entry. Kept rather than made again: the entry that a person looks at is the
/// one that was offered, whatever was typed since.
/// </summary>
internal sealed class LastLists
{
    private const int Most = 8;
    private readonly Lock _lock = new();
    private readonly Queue<(int Id, ImmutableArray<CompletionEntry> Entries)> _lists = new();
    private int _last;

    internal int Keep(ImmutableArray<CompletionEntry> entries)
    {
        lock (_lock)
        {
            _lists.Enqueue((++_last, entries));
            if (_lists.Count > Most)
            {
                _lists.Dequeue();
            }

            return _last;
        }
    }

    /// <summary>Null for an entry that isn't kept any more.</summary>
    internal CompletionEntry? Find(int list, int item)
    {
        lock (_lock)
        {
            return _lists.FirstOrDefault(kept => kept.Id == list).Entries is { IsDefault: false } entries && item >= 0 && item < entries.Length ? entries[item] : null;
        }
    }
}

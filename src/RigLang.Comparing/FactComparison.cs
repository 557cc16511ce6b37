using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Comparing;

/// <summary>
/// The lines of one declaration against those that it had before, matched by keyword and key; where lines have no key, by their order. Only its own lines: what it
/// inherits is compared where it stands, save where two declarations of one state are held against each other as they count.
/// </summary>
internal sealed class FactComparison(DeclarationPair pair, Func<DeclarationKind, string, string> newName)
{
    private readonly List<Change> changes = [];
    private ImmutableArray<FactDeclaration> leftOut = [];

    public static ImmutableArray<Change> Compare(DeclarationPair pair, Func<DeclarationKind, string, string> newName)
    {
        var comparison = new FactComparison(pair, newName);
        comparison.Blocks(pair.Before!.Own.OwnLines, pair.After!.Own.OwnLines, "");
        return [.. comparison.changes];
    }

    /// <summary>Two declarations as they count, with what they inherit. Notes, expectations and accepted findings are about one of them alone and left out.</summary>
    public static ImmutableArray<Change> CompareWhole(DeclarationPair pair)
    {
        var comparison = new FactComparison(pair, (_, name) => name);
        comparison.leftOut = [EverywhereFacts.Note, EverywhereFacts.Allow, EverywhereFacts.Expect, EverywhereFacts.Without];
        comparison.Blocks(pair.Before!.Block, pair.After!.Block, "");
        return [.. comparison.changes];
    }

    private void Blocks(Block before, Block after, string within)
    {
        var old = Keyed(before);
        var now = Keyed(after);
        var gone = old.Where(entry => !now.ContainsKey(entry.Key)).Select(entry => entry.Value).ToList();
        Fact? above = null;
        foreach (var (key, line) in now)
        {
            if (old.TryGetValue(key, out var was))
            {
                Lines(was, line, within);
                above = was;
                Inner(before, after, was, line, within);
            }
            else if (gone.Find(other => IsRenamed(other, line, before, after)) is { } other)
            {
                gone.Remove(other);
                changes.Add(Of(ChangeKind.Renamed, other, line, within, []));
                above = other;
            }
            else
            {
                var text = FactLines.Of(line);
                changes.Add(Of(ChangeKind.Added, null, line, within, [FactLines.Insert(pair.Before!, before, above, text)]));
            }
        }

        foreach (var line in gone)
        {
            changes.Add(Of(ChangeKind.Removed, line, null, within, [FactLines.Remove(line)]));
        }
    }

    private void Lines(Fact was, Fact line, string within)
    {
        switch (FactText.Compare(was, line, newName))
        {
            case Sameness.Rewritten when FactText.Of(was) != FactText.Of(line) && !IsReferenceRenamed(was, line):
                changes.Add(Of(ChangeKind.Rewritten, was, line, within, []));
                break;
            case Sameness.Different:
                changes.Add(Of(ChangeKind.Changed, was, line, within, [FactLines.Replace(was, line)]));
                break;
        }
    }

    /// <summary>The rename itself is told of at the declaration; that its users follow is no news.</summary>
    private bool IsReferenceRenamed(Fact was, Fact line) => was.Declaration.Signature.Slots.Any(slot =>
        slot.Form is ReferenceForm reference && was.Values.GetValueOrDefault(slot.Role) is WordValue word && line.Values.GetValueOrDefault(slot.Role) is WordValue now
        && word.Word != now.Word && newName(reference.Kind, word.Word) == now.Word);

    private void Inner(Block before, Block after, Fact was, Fact line, string within)
    {
        var (old, now) = (BlockOf(before, was), BlockOf(after, line));
        if (old is not null && now is not null)
        {
            Blocks(old, now, Joined(within, line));
        }
    }

    /// <summary>A line under another key that says the same, with the same lines in it.</summary>
    private static bool IsRenamed(Fact was, Fact line, Block before, Block after)
    {
        if (was.Declaration != line.Declaration || was.Key.Length == 0 || was.Declaration == EverywhereFacts.Without)
        {
            return false;
        }

        static string Blanked(Fact fact) => FactText.Of(fact).Replace(fact.Key, "*", StringComparison.Ordinal);
        static string Said(Fact fact, Block outer) => string.Join('\n', BlockOf(outer, fact)?.WithInner().SelectMany(block => block.Facts.Select(FactText.Of)) ?? []);
        return Blanked(was) == Blanked(line) && Said(was, before) == Said(line, after) && (was.Values.Count > 1 || BlockOf(before, was) is not null);
    }

    private Change Of(ChangeKind kind, Fact? was, Fact? line, string within, ImmutableArray<Step> steps) =>
        new(kind, pair.Title, Joined(within, line ?? was!), was is null ? null : FactText.Of(was), line is null ? null : FactText.Of(line))
        {
            PlaceBefore = was?.Place,
            PlaceAfter = line?.Place,
            Steps = steps,
        };

    private static string Joined(string within, Fact line) => within.Length == 0 ? line.Title : $"{within}, {line.Title}";

    private static Block? BlockOf(Block outer, Fact line) => outer.Blocks.FirstOrDefault(block => ReferenceEquals(block.Opener, line));

    private OrderedDictionary<(FactDeclaration Fact, string Key, int Index), Fact> Keyed(Block block)
    {
        var counts = new Dictionary<(FactDeclaration, string), int>();
        var keyed = new OrderedDictionary<(FactDeclaration, string, int), Fact>();
        foreach (var line in block.Facts.Where(line => !leftOut.Contains(line.Declaration)))
        {
            var index = counts.GetValueOrDefault((line.Declaration, line.Key));
            counts[(line.Declaration, line.Key)] = index + 1;
            keyed.Add((line.Declaration, line.Key, index), line);
        }

        return keyed;
    }
}

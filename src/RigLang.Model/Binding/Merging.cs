using System.Collections.Immutable;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax;

namespace RigLang.Model.Binding;

/// <summary>
/// Puts a declaration's own lines over those of the declaration it is like: a line with the same keyword and key takes the other's place, a block with
/// the same key is merged line by line, a new key adds, <c>without</c> takes away.
/// </summary>
internal static class Merging
{
    public static Block Plain(OwnBlock own, string path) =>
        new(own.Declaration, path, own.Opener, own.Facts, [.. own.Blocks.Select(block => Plain(block, PathOf(path, block)))]);

    public static Block Over(Block inherited, OwnBlock own, string path, List<Finding> findings)
    {
        var withouts = own.Facts.Where(fact => fact.Declaration == EverywhereFacts.Without).ToList();
        var removed = withouts.Select(fact => fact.Key).ToHashSet(StringComparer.Ordinal);
        foreach (var without in withouts.Where(fact => inherited.Facts.All(line => line.Title != fact.Key)))
        {
            findings.Add(WithoutFindsNothing.Report(without, without.Key, inherited.Facts.Select(line => line.Title), hasParent: true));
        }

        var facts = MergeFacts(inherited, own, removed);
        ReportNearKeys(inherited, own, removed, findings);
        return new Block(own.Declaration, path, own.Opener ?? inherited.Opener, facts, MergeBlocks(inherited, own, removed, path, findings));
    }

    /// <summary>A declaration that is like no other can't take a line away.</summary>
    public static void ReportWithouts(OwnBlock own, List<Finding> findings)
    {
        foreach (var without in own.Facts.Where(fact => fact.Declaration == EverywhereFacts.Without))
        {
            findings.Add(WithoutFindsNothing.Report(without, without.Key, [], hasParent: false));
        }

        foreach (var block in own.Blocks)
        {
            ReportWithouts(block, findings);
        }
    }

    private static ImmutableArray<Fact> MergeFacts(Block inherited, OwnBlock own, HashSet<string> removed)
    {
        var ownByTitle = own.Facts.Where(fact => !IsOrdered(fact)).ToDictionary(fact => fact.Title, StringComparer.Ordinal);
        // Ordered lines have no key to meet by: a section of one's own replaces all that were inherited. Notes only add.
        var ownOrdered = own.Facts.Where(fact => IsOrdered(fact) && fact.Declaration != EverywhereFacts.Note).Select(fact => fact.Declaration).ToHashSet();
        var facts = ImmutableArray.CreateBuilder<Fact>();
        var placed = new HashSet<Fact>();
        foreach (var line in inherited.Facts)
        {
            if (removed.Contains(line.Title) || ownOrdered.Contains(line.Declaration))
            {
                continue;
            }

            var mine = IsOrdered(line) ? null : ownByTitle.GetValueOrDefault(line.Title);
            facts.Add(mine ?? line);
            if (mine is not null)
            {
                placed.Add(mine);
            }
        }

        facts.AddRange(own.Facts.Where(fact => fact.Declaration != EverywhereFacts.Without && !placed.Contains(fact)));
        return facts.ToImmutable();
    }

    private static ImmutableArray<Block> MergeBlocks(Block inherited, OwnBlock own, HashSet<string> removed, string path, List<Finding> findings)
    {
        var mine = own.Blocks.ToDictionary(block => (block.Declaration, block.Key));
        var blocks = ImmutableArray.CreateBuilder<Block>();
        foreach (var block in inherited.Blocks.Where(block => !removed.Contains(block.Opener!.Title)))
        {
            if (mine.Remove((block.Declaration, block.Key), out var over))
            {
                // "aboard nothing" says that nothing at all is left of the inherited block.
                blocks.Add(over.Opener!.Values.ContainsKey("nothing") ? Plain(over, PathOf(path, over)) : Over(block, over, PathOf(path, over), findings));
            }
            else
            {
                blocks.Add(Inherited(block, path));
            }
        }

        blocks.AddRange(own.Blocks.Where(block => mine.ContainsKey((block.Declaration, block.Key))).Select(block => Plain(block, PathOf(path, block))));
        foreach (var added in own.Blocks.Where(block => mine.ContainsKey((block.Declaration, block.Key))))
        {
            ReportWithouts(added, findings);
        }

        return blocks.ToImmutable();
    }

    /// <summary>A copy, since a block knows the one around it.</summary>
    private static Block Inherited(Block block, string outer)
    {
        var path = $"{outer}/{block.Opener!.Title}";
        return new Block(block.Declaration, path, block.Opener, block.Facts, [.. block.Blocks.Select(inner => Inherited(inner, path))]);
    }

    private static void ReportNearKeys(Block inherited, OwnBlock own, HashSet<string> removed, List<Finding> findings)
    {
        foreach (var fact in own.Facts.Where(fact => fact.Declaration.KeyRoles is [var role, ..] && fact.Values.GetValueOrDefault(role) is WordValue && fact.Key.Length > 2))
        {
            var others = inherited.All(fact.Declaration).Where(line => !removed.Contains(line.Title)).ToList();
            if (others.Exists(line => line.Key == fact.Key) || Spelling.Nearest(fact.Key, others.Select(line => line.Key)) is not { } near)
            {
                continue;
            }

            findings.Add(AddsBesideInherited.Report(fact, others.First(line => line.Key == near), fact.PlaceOf(fact.Declaration.KeyRoles[0])));
        }
    }

    private static bool IsOrdered(Fact fact) => fact.Declaration.Repeats && fact.Declaration.KeyRoles.IsEmpty;

    private static string PathOf(string path, OwnBlock block) => $"{path}/{block.Opener!.Title}";
}

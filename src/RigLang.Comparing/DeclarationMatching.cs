using System.Collections.Immutable;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Comparing;

/// <summary>
/// Which declaration became which: first by file, kind and name; then by kind and name in another file; then, of what is left, by what they say: a declaration that
/// goes while one of its kind comes that says mostly the same was renamed.
/// </summary>
internal static class DeclarationMatching
{
    /// <summary>The share of lines that must be the same for a declaration to count as renamed, not as one gone and another come.</summary>
    private const double MostlyTheSame = 0.6;

    /// <summary>In the order of the state after; what is gone comes last.</summary>
    public static ImmutableArray<DeclarationPair> Match(ComparedState before, ComparedState after)
    {
        var old = Named(before);
        var found = new Dictionary<Declaration, Declaration>(ReferenceEqualityComparer.Instance as IEqualityComparer<Declaration>);
        var left = Named(after);
        Take(old, left, found, declaration => (before.NameOf(declaration.Own.File), declaration.Kind, declaration.Name), declaration => (after.NameOf(declaration.Own.File), declaration.Kind, declaration.Name));
        Take(old, left, found, declaration => (declaration.Kind, declaration.Name), declaration => (declaration.Kind, declaration.Name));
        TakeRenamed(old, left, found);
        return
        [
            .. Named(after).Select(declaration => new DeclarationPair(found.GetValueOrDefault(declaration), declaration)),
            .. old.Select(gone => new DeclarationPair(gone, null)),
        ];
    }

    /// <summary>Of two with one kind and name in a file the first counts, as it does everywhere.</summary>
    private static List<Declaration> Named(ComparedState state) =>
        [.. state.Declarations.Where(declaration => declaration.Name.Length > 0).DistinctBy(declaration => (declaration.Own.File, declaration.Kind, declaration.Name))];

    private static void Take<TKey>(
        List<Declaration> old, List<Declaration> left, Dictionary<Declaration, Declaration> found, Func<Declaration, TKey> oldKey, Func<Declaration, TKey> newKey)
        where TKey : notnull
    {
        var byKey = old.GroupBy(oldKey).ToDictionary(group => group.Key, group => group.First());
        foreach (var declaration in left.ToList())
        {
            if (byKey.Remove(newKey(declaration), out var was))
            {
                found[declaration] = was;
                old.Remove(was);
                left.Remove(declaration);
            }
        }
    }

    private static void TakeRenamed(List<Declaration> old, List<Declaration> left, Dictionary<Declaration, Declaration> found)
    {
        var oldLines = old.ToDictionary(declaration => declaration, LinesOf);
        foreach (var declaration in left.ToList())
        {
            var mine = LinesOf(declaration);
            var best = old.Where(other => other.Kind == declaration.Kind && Likeness(oldLines[other], mine) >= MostlyTheSame)
                .OrderByDescending(other => Likeness(oldLines[other], mine)).FirstOrDefault();
            if (best is not null)
            {
                found[declaration] = best;
                old.Remove(best);
                left.Remove(declaration);
            }
        }
    }

    private static HashSet<string> LinesOf(Declaration declaration) =>
        [.. declaration.Own.OwnLines.WithInner().SelectMany(block => block.Facts.Select(line => $"{block.Declaration.Keyword} {block.Key}: {FactText.Of(line)}"))];

    private static double Likeness(HashSet<string> one, HashSet<string> other) =>
        one.Count == 0 || other.Count == 0 ? 0 : (double)one.Count(other.Contains) / Math.Max(one.Count, other.Count);
}

using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Linking;

namespace RigLang.Comparing;

/// <summary>What the checks say now and didn't before, and the other way round.</summary>
/// <param name="New">In the state after.</param>
/// <param name="Cleared">In the state before.</param>
/// <param name="Still">How many are in both.</param>
public sealed record FindingChanges(ImmutableArray<Finding> New, ImmutableArray<Finding> Cleared, int Still);

/// <summary>Matches findings by check, declaration and statement. The numbers in their words may differ: it is still the same matter.</summary>
internal static class FindingComparison
{
    public static FindingChanges Compare(ComparedState before, ComparedState after, ImmutableArray<DeclarationPair> pairs, CancellationToken cancel)
    {
        var names = pairs.Where(pair => pair.IsBoth).ToDictionary(pair => pair.Before!.Own, pair => pair.After!.Own);
        var old = FindingsOf(before, cancel).ToLookup(finding => KeyOf(before, finding, own => names.GetValueOrDefault(own) ?? own));
        var now = FindingsOf(after, cancel).ToLookup(finding => KeyOf(after, finding, own => own));
        var keys = old.Select(group => group.Key).Union(now.Select(group => group.Key)).ToList();
        return new FindingChanges(
            [.. keys.SelectMany(key => now[key].Skip(old[key].Count()))],
            [.. keys.SelectMany(key => old[key].Skip(now[key].Count()))],
            keys.Sum(key => Math.Min(old[key].Count(), now[key].Count())));
    }

    private static IEnumerable<Finding> FindingsOf(ComparedState state, CancellationToken cancel) => state.Files.SelectMany(file => state.Analysis.Findings(file, cancel).Remaining);

    /// <param name="newest">What became of a declaration.</param>
    private static (string Code, object Home, string Statement) KeyOf(ComparedState state, Finding finding, Func<OwnDeclaration, OwnDeclaration> newest)
    {
        var place = finding.Place;
        var own = state.Workspace.Find(place.File)?.Declarations.FirstOrDefault(own => ReferenceEquals(own.Syntax, place.Declaration));
        var words = place.Line < place.Declaration.Lines.Length ? place.Declaration.Lines[place.Line].Text.Trim().Split(' ', 2)[0] : "";
        return (finding.Check.Code, own is { Kind: not null, Name.Length: > 0 } ? newest(own) : state.NameOf(place.File), words);
    }
}

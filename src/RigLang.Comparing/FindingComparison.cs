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
        var names = pairs.Where(pair => pair.IsRenamed).ToDictionary(pair => (before.NameOf(pair.Before!.Own.File), pair.Before.Own.Syntax), pair => pair.After!.ToString());
        var old = FindingsOf(before, cancel).ToLookup(finding => KeyOf(before, finding, (file, own) => names.GetValueOrDefault((file, own.Syntax))));
        var now = FindingsOf(after, cancel).ToLookup(finding => KeyOf(after, finding, (_, _) => null));
        var keys = old.Select(group => group.Key).Union(now.Select(group => group.Key)).ToList();
        return new FindingChanges(
            [.. keys.SelectMany(key => now[key].Skip(old[key].Count()))],
            [.. keys.SelectMany(key => old[key].Skip(now[key].Count()))],
            keys.Sum(key => Math.Min(old[key].Count(), now[key].Count())));
    }

    private static IEnumerable<Finding> FindingsOf(ComparedState state, CancellationToken cancel) => state.Files.SelectMany(file => state.Analysis.Findings(file, cancel).Remaining);

    private static (string Code, string File, string Declaration, string Statement) KeyOf(ComparedState state, Finding finding, Func<string, OwnDeclaration, string?> newName)
    {
        var file = state.NameOf(finding.Place.File);
        var own = state.Workspace.Find(finding.Place.File)?.Declarations.FirstOrDefault(own => ReferenceEquals(own.Syntax, finding.Place.Declaration));
        var declaration = own is null ? "" : newName(file, own) ?? $"{own.Kind?.ToString()} {own.Name}";
        var words = finding.Place.Line < finding.Place.Declaration.Lines.Length ? finding.Place.Declaration.Lines[finding.Place.Line].Text.Trim().Split(' ', 2)[0] : "";
        return (finding.Check.Code, file, declaration.ToLowerInvariant(), words);
    }
}

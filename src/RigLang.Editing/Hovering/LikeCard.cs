using RigLang.Editing.Comparing;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Binding;
using RigLang.Model.Linking;

namespace RigLang.Editing.Hovering;

/// <summary>What <c>like</c> takes over and what differs.</summary>
internal static class LikeCard
{
    /// <summary>Limits and results that are shown; the command shows all.</summary>
    private const int MostRows = 8;
    private const int MostLimits = 3;

    public static CardText Of(View view, Declaration declaration)
    {
        var parent = declaration.Parent!;
        var before = Lines(parent.Block).ToDictionary(line => line.Key, line => line.Fact);
        var after = Lines(declaration.Block).ToDictionary(line => line.Key, line => line.Fact);
        var differences = new List<string>();
        foreach (var (key, fact) in after.Where(line => line.Value.Place.Declaration == declaration.Own.Syntax && line.Value.Declaration.Opens is null))
        {
            differences.Add(before.TryGetValue(key, out var old)
                ? $"`{fact.Title}` {BlockWords.Value(fact)}, there {BlockWords.Value(old)}"
                : $"`{fact.Title}` {BlockWords.Value(fact)}, added");
        }

        differences.AddRange(before.Where(line => !after.ContainsKey(line.Key)).Select(line => $"`{line.Value.Title}` taken away"));
        var inherited = after.Values.Count(fact => fact.Place.Declaration != declaration.Own.Syntax);
        return new CardText().Paragraph($"**{declaration}** is like {parent}")
            .Paragraph(differences.Count == 0 ? $"All its {inherited} lines are those of {parent.Name}" : $"{inherited} lines are those of {parent.Name}; different are")
            .Bullets(differences, most: 12)
            .Table(Rows(view, declaration));
    }

    /// <summary>What comes of it, side by side: limits that are crossed first, then the results that differ most. Without shares, which cost more than a hover may.</summary>
    private static IEnumerable<string[]> Rows(View view, Declaration declaration)
    {
        var outcome = ComparisonView.Outcome(view.State.Analysis, declaration.Parent!, declaration, view.State.Units);
        if (outcome is null)
        {
            return [];
        }

        // What is crossed or mended is always told; of the others the closest leave room for results.
        var limits = outcome.Limits.Where((limit, index) => limit.Mark.Length > 0 || index < MostLimits).Select(limit => new[] { limit.Title, limit.Before, limit.After, limit.Mark }).ToList();
        var rows = limits.Concat(outcome.Results.Take(Math.Max(MostRows - limits.Count, MostRows - MostLimits)).Select(row => new[] { row.Title, row.Before, row.After, row.Difference })).ToList();
        var left = outcome.Limits.Length + outcome.Results.Length - rows.Count;
        return [["", declaration.Parent!.Name, declaration.Name, ""], .. rows, .. left > 0 ? new[] { new[] { $"{left} more: riglang beside {declaration.Name}" } } : []];
    }

    private static IEnumerable<(string Key, Fact Fact)> Lines(Block block, string path = "") =>
        block.Facts.Select((fact, index) => (Key: $"{path}/{fact.Title}" + (fact.Declaration.Repeats && fact.Declaration.KeyRoles.IsEmpty ? $"#{index}" : ""), Fact: fact))
            .Concat(block.Blocks.SelectMany(inner => Lines(inner, $"{path}/{inner.Opener!.Title}")));
}

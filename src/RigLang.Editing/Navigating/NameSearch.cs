using System.Collections.Immutable;
using RigLang.Editing.Outlining;
using RigLang.Editing.Workspaces;

namespace RigLang.Editing.Navigating;

/// <summary>Finds declarations and blocks of all files by some of their letters.</summary>
internal static class NameSearch
{
    /// <summary>More than a person looks through; editors ask again with more letters.</summary>
    private const int Most = 500;

    public static ImmutableArray<NamedPlace> Find(EditorState state, string query, CancellationToken cancel)
    {
        var found = new List<(int Rank, NamedPlace Name)>();
        foreach (var id in state.AllFiles)
        {
            cancel.ThrowIfCancellationRequested();
            if (state.Workspace.Find(id) is { } file)
            {
                foreach (var entry in OutlineBuilder.Of(file).Where(entry => entry.Sort != OutlineSort.File))
                {
                    Add(entry, id.Name);
                }
            }

            void Add(OutlineEntry entry, string container)
            {
                if (entry.Name.Length > 0 && Rank(entry, query) is { } rank)
                {
                    found.Add((rank, new NamedPlace(entry.Name, container, entry.Sort, new FilePlace(id, entry.NameRange))));
                }

                foreach (var child in entry.Children)
                {
                    Add(child, entry.Name);
                }
            }
        }

        return [.. found.OrderBy(one => one.Rank).ThenBy(one => query.Length == 0 ? 0 : one.Name.Name.Length).Select(one => one.Name).Take(Most)];
    }

    /// <summary>0 for the name itself, 1 for a name that begins so, 2 for one that holds it, 3 for one that has the letters in their order or a title that holds them; null for none.</summary>
    private static int? Rank(OutlineEntry entry, string query) =>
        query.Length == 0 || entry.Name.Equals(query, StringComparison.OrdinalIgnoreCase) ? 0
        : entry.Name.StartsWith(query, StringComparison.OrdinalIgnoreCase) ? 1
        : entry.Name.Contains(query, StringComparison.OrdinalIgnoreCase) ? 2
        : HasLetters(entry.Name, query) || entry.Detail.Contains(query, StringComparison.OrdinalIgnoreCase) ? 3
        : null;

    private static bool HasLetters(string name, string query)
    {
        var at = 0;
        foreach (var letter in query)
        {
            at = name.IndexOf(letter.ToString(), at, StringComparison.OrdinalIgnoreCase) + 1;
            if (at == 0)
            {
                return false;
            }
        }

        return true;
    }
}

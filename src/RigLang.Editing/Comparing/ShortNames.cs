using System.Collections.Immutable;
using RigLang.Comparing;

namespace RigLang.Editing.Comparing;

/// <summary>What the changes of one comparison are called where there is little room: the end of each title that no other has.</summary>
public sealed class ShortNames
{
    private readonly Dictionary<Change, string> names = new(ReferenceEqualityComparer.Instance as IEqualityComparer<Change>);

    private ShortNames()
    {
    }

    public string this[Change change] => names[change];

    public static ShortNames Of(ImmutableArray<Change> changes)
    {
        var made = new ShortNames();
        foreach (var change in changes)
        {
            var parts = change.Title.Split(", ");
            var others = changes.Where(other => !ReferenceEquals(other, change)).Select(other => ", " + other.Title).ToList();
            var shortest = Enumerable.Range(1, parts.Length).Select(count => string.Join(", ", parts[^count..])).FirstOrDefault(end => !others.Exists(other => other.EndsWith(", " + end, StringComparison.Ordinal)));
            made.names[change] = shortest ?? change.Title;
        }

        return made;
    }
}

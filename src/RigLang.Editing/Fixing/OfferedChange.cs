using System.Collections.Immutable;

namespace RigLang.Editing;

/// <summary>A change that is offered at a place. What it changes is worked out when somebody takes it.</summary>
public sealed class OfferedChange(string title, ChangeSort sort, Func<ImmutableArray<(FilePlace Place, string NewText)>> edits)
{
    private readonly Lazy<ImmutableArray<(FilePlace Place, string NewText)>> edits = new(edits);

    public OfferedChange(string title, ChangeSort sort, FilePlace place, string newText)
        : this(title, sort, () => [(place, newText)])
    {
    }

    public string Title { get; } = title;

    public ChangeSort Sort { get; } = sort;

    /// <summary>The one that a person most likely wants.</summary>
    public bool IsPreferred { get; init; }

    /// <summary>Findings that are gone afterwards.</summary>
    public ImmutableArray<EditorFinding> Cures { get; init; } = [];

    public ImmutableArray<(FilePlace Place, string NewText)> Edits => edits.Value;

    public override string ToString() => Title;
}

/// <summary>What sort of change it is.</summary>
public enum ChangeSort
{
    /// <summary>Mends a finding.</summary>
    Cure,

    /// <summary>Mends every finding of one kind in the file.</summary>
    CureAlike,

    /// <summary>Accepts a finding with a reason.</summary>
    Accept,

    /// <summary>Mends all that is merely written wrong in the file, where only one thing can be meant.</summary>
    CureFile,

    /// <summary>Writes the same in another way, or something else in its place.</summary>
    Rewrite,

    /// <summary>Makes a declaration of some lines.</summary>
    Extract,
}

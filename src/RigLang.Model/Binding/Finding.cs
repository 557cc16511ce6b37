using System.Collections.Immutable;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Binding;

/// <summary>Something to report, with the place, the words and what cures it.</summary>
public sealed record Finding(CheckDeclaration Check, Place Place, string Message)
{
    /// <summary>Other places that have to do with it.</summary>
    public ImmutableArray<Related> Related { get; init; } = [];

    /// <summary>Changes that cure it, the best first.</summary>
    public ImmutableArray<Fix> Fixes { get; init; } = [];

    /// <summary>
    /// What of several things that one check looks at it is about: an axle, a rating, a leg. The same in every state of the files, whatever the numbers; empty where
    /// the place tells.
    /// </summary>
    public string About { get; init; } = "";

    /// <summary>Usually the check's own; a practice may make a finding a warning.</summary>
    public Severity Severity { get; init; } = Check.Severity;
}

/// <summary>Another place, and what it has to do with the finding.</summary>
public sealed record Related(Place Place, string Message);

/// <summary>Texts to put in place of what stands there; an empty span inserts.</summary>
public sealed record Fix(string Title, ImmutableArray<Replacement> Edits)
{
    public Fix(string title, Place place, string newText)
        : this(title, [new Replacement(place, newText)])
    {
    }
}

/// <summary>One change of a fix.</summary>
public readonly record struct Replacement(Place Place, string NewText);

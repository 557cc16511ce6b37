using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Model.Linking;

/// <summary>A file with its <c>use</c> and <c>like</c> followed.</summary>
public sealed class LinkedFile
{
    internal LinkedFile(
        RigFile file, ImmutableArray<Declaration> declarations, IReadOnlyDictionary<OwnDeclaration, Declaration> followed, ImmutableArray<RigFile> used,
        ImmutableArray<Finding> findings)
    {
        File = file;
        Declarations = declarations;
        Followed = followed;
        Used = used;
        Findings = findings;
    }

    public RigFile File { get; }

    /// <summary>In file order. Of two with one kind and name both are here; the first is the one that the name finds.</summary>
    public ImmutableArray<Declaration> Declarations { get; }

    /// <summary>The files that its <c>use</c> lines name and that could be read.</summary>
    public ImmutableArray<RigFile> Used { get; }

    /// <summary>What showed when names were looked up.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Everything that was followed for this file: its declarations, and those of other files that they are like.</summary>
    internal IReadOnlyDictionary<OwnDeclaration, Declaration> Followed { get; }

    /// <summary>What became of a declaration of the file; null for a <c>use</c> line and for an opening that isn't understood.</summary>
    public Declaration? Of(OwnDeclaration own) => Followed.GetValueOrDefault(own);

    /// <summary>The declaration that the name finds in this file alone.</summary>
    public Declaration? FindOwn(DeclarationKind kind, string name) => File.Find(kind, name) is { } own ? Of(own) : null;

    internal Declaration? Find(Workspace workspace, DeclarationKind kind, string name) =>
        FindOwn(kind, name)
        ?? Used.Select(file => workspace.Link(file.Id)?.FindOwn(kind, name)).FirstOrDefault(found => found is not null);

    /// <summary>Every name of the kind in sight.</summary>
    public IEnumerable<string> NamesInSight(DeclarationKind kind) =>
        Used.Append(File).SelectMany(file => file.Declarations).Where(own => own.Kind == kind && own.Name.Length > 0).Select(own => own.Name).Distinct();
}

using System.Collections.Immutable;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>
/// A declaration understood from its own lines alone. Kept from one state of the file to the next while its syntax is the same object.
/// </summary>
public sealed class OwnDeclaration
{
    private Block? plain;

    internal OwnDeclaration(FileId file, DeclarationSyntax syntax, DeclarationKind? kind, OwnBlock? root, ImmutableArray<Finding> findings)
    {
        File = file;
        Syntax = syntax;
        Kind = kind;
        Root = root;
        Findings = findings;
    }

    public FileId File { get; }

    public DeclarationSyntax Syntax { get; }

    /// <summary>Null for <c>use</c> and <c>language</c> lines, for text before the first opening, and for an opening that isn't understood.</summary>
    public DeclarationKind? Kind { get; }

    internal OwnBlock? Root { get; }

    /// <summary>What its own lines show, those of the line reader included.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Empty when the opening has none.</summary>
    public string Name => Syntax.Opening?.Name?.Text ?? "";

    public string? Title => Syntax.Opening?.Title?.Value;

    /// <summary>The name behind <c>like</c>.</summary>
    public Token? Parent => Syntax.Opening?.Parent;

    /// <summary>Where its name stands, or the opening line when it has none.</summary>
    public Place NamePlace => new(File, Syntax, 0, Syntax.Opening?.Name?.Span ?? Syntax.Head?.Span ?? default);

    /// <summary>Names it among all of a workspace.</summary>
    public string Path => $"{File.Path}#{Kind?.Keyword()} {Name}";

    /// <summary>The block of its own lines, without anything inherited; made once. Only for a declaration of a known kind.</summary>
    public Block OwnLines => plain ??= Merging.Plain(Root!, Path);
}

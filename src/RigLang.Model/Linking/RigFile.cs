using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Linking;

/// <summary>One file, read and understood by itself. Immutable; the next state keeps every declaration that an edit leaves alone.</summary>
public sealed class RigFile
{
    private Dictionary<DeclarationSyntax, int>? firstLines;
    private Dictionary<(DeclarationKind Kind, string Name), OwnDeclaration>? byName;

    private RigFile(FileId id, FileSyntax syntax, ImmutableArray<OwnDeclaration> declarations)
    {
        Id = id;
        Syntax = syntax;
        Declarations = declarations;
    }

    public FileId Id { get; }

    public FileSyntax Syntax { get; }

    /// <summary>One for each declaration of the syntax, in order, <c>use</c> lines and the like included.</summary>
    public ImmutableArray<OwnDeclaration> Declarations { get; }

    /// <summary>The <c>use</c> lines, in order.</summary>
    public IEnumerable<(UseSyntax Use, DeclarationSyntax Syntax)> Uses =>
        Declarations.Where(own => own.Syntax.Head is UseSyntax).Select(own => ((UseSyntax)own.Syntax.Head!, own.Syntax));

    /// <summary>The declaration that the name finds in this file alone; of two with one kind and name the first.</summary>
    public OwnDeclaration? Find(DeclarationKind kind, string name) => (byName ??= ByName()).GetValueOrDefault((kind, name));

    public static RigFile Parse(FileId id, string text) => Of(id, FileSyntax.Parse(text), null);

    /// <summary>The file with another text; what <paramref name="syntax"/> shares with this one isn't understood again.</summary>
    public RigFile With(FileSyntax syntax) => Of(Id, syntax, this);

    /// <summary>The line of the file where the declaration begins, or −1 when it isn't in this state of the file.</summary>
    public int FirstLineOf(DeclarationSyntax declaration)
    {
        var lines = firstLines;
        if (lines is null)
        {
            lines = new Dictionary<DeclarationSyntax, int>(ReferenceEqualityComparer.Instance as IEqualityComparer<DeclarationSyntax>);
            for (var index = 0; index < Syntax.Declarations.Length; index++)
            {
                lines[Syntax.Declarations[index]] = Syntax.FirstLines[index];
            }

            firstLines = lines;
        }

        return lines.GetValueOrDefault(declaration, -1);
    }

    private Dictionary<(DeclarationKind Kind, string Name), OwnDeclaration> ByName()
    {
        var names = new Dictionary<(DeclarationKind Kind, string Name), OwnDeclaration>();
        foreach (var own in Declarations)
        {
            if (own is { Kind: { } kind, Name: { Length: > 0 } name })
            {
                names.TryAdd((kind, name), own);
            }
        }

        return names;
    }

    private static RigFile Of(FileId id, FileSyntax syntax, RigFile? before)
    {
        var known = new Dictionary<DeclarationSyntax, OwnDeclaration>(ReferenceEqualityComparer.Instance as IEqualityComparer<DeclarationSyntax>);
        foreach (var own in before?.Declarations ?? [])
        {
            known[own.Syntax] = own;
        }

        var declarations = ImmutableArray.CreateBuilder<OwnDeclaration>(syntax.Declarations.Length);
        foreach (var declaration in syntax.Declarations)
        {
            declarations.Add(known.TryGetValue(declaration, out var own) ? own : DeclarationBinder.Bind(id, declaration));
        }

        return new RigFile(id, syntax, declarations.MoveToImmutable());
    }
}

using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Editing.Navigating;

/// <summary>What a name stands for. Two names that stand for the same give equal symbols.</summary>
internal abstract record Symbol;

/// <summary>A declaration, by the file that holds it.</summary>
internal sealed record DeclarationSymbol(DeclarationKind Kind, FileId File, string Name) : Symbol
{
    public static DeclarationSymbol Of(Declaration declaration) => new(declaration.Kind, declaration.Own.File, declaration.Name);
}

/// <summary>Something that a line of a declaration names: an axle, a tank, an item, a place of a trip.</summary>
/// <param name="Owner">Under <c>like</c>, the first declaration of the chain that has it.</param>
internal sealed record LocalSymbol(DeclarationSymbol Owner, LocalSort Sort, string Name) : Symbol;

/// <summary>Another file.</summary>
internal sealed record FileSymbol(FileId File) : Symbol;

/// <summary>What sort of thing a line names.</summary>
internal enum LocalSort
{
    Axle,
    Tank,
    Item,
    Mount,
    Place,
}

using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Comparing;

/// <summary>A declaration in the state before and the one that became of it; one side is null where it was added or taken away.</summary>
public sealed record DeclarationPair(Declaration? Before, Declaration? After)
{
    /// <summary>The newer one, which a reader knows; the older where it is gone.</summary>
    public Declaration Newest => After ?? Before!;

    public DeclarationKind Kind => Newest.Kind;

    public bool IsBoth => Before is not null && After is not null;

    public bool IsRenamed => IsBoth && Before!.Name != After!.Name;

    /// <summary>"vehicle van".</summary>
    public string Title => Newest.ToString();
}

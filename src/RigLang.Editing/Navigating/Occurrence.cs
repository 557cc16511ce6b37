using RigLang.Model.Binding;

namespace RigLang.Editing.Navigating;

/// <summary>A name where it stands, and what it stands for.</summary>
internal readonly record struct Occurrence(Symbol Symbol, Place Place, bool IsDeclaration);

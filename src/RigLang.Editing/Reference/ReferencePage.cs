namespace RigLang.Editing.Reference;

/// <summary>A file that is made from the declarations.</summary>
/// <param name="Path">From the repository's top, with forward slashes.</param>
/// <param name="Text">With LF, ending in one.</param>
public sealed record ReferencePage(string Path, string Text);

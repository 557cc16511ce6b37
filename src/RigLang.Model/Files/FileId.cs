namespace RigLang.Model.Files;

/// <summary>
/// Which file: an absolute path with forward slashes, or a name of the editor's own (<c>untitled:Untitled-1</c>). Compared to the letter; nothing else is read into it.
/// </summary>
public readonly record struct FileId(string Path)
{
    /// <summary>The last part of the path.</summary>
    public string Name => Path[(Path.LastIndexOf('/') + 1)..];

    /// <summary>The path up to the last slash, without it; empty when there is none.</summary>
    public string Folder => Path.LastIndexOf('/') is var slash and > 0 ? Path[..slash] : "";

    public override string ToString() => Path;
}

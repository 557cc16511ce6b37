namespace RigLang.Model.Files;

/// <summary>
/// Where files come from: the disk, an editor's unsaved text over the disk, a revision's tree, or memory. Read-only, and the only way in for the floors
/// below the program. Implementations don't throw for files that are missing or can't be read; they say why.
/// </summary>
public interface IFileSource
{
    /// <summary>The text of a file, or why there is none.</summary>
    FileText Read(FileId file);

    /// <summary>Every <c>.rig</c> file in a folder and the folders below it, hidden folders left out, in ordinal order.</summary>
    IReadOnlyList<FileId> RigFilesUnder(string folder);
}

/// <summary>Either <see cref="Text"/> or <see cref="Problem"/> is there: a half sentence such as "no such file".</summary>
public readonly record struct FileText(string? Text, string? Problem)
{
    public static FileText Of(string text) => new(text, null);

    public static FileText None(string problem) => new(null, problem);
}

using RigLang.Model.Files;

namespace RigLang.Editing.Tests.Support;

/// <summary>A disk whose files come, go and change, and that remembers what was read of it.</summary>
internal sealed class ChangingSource : IFileSource
{
    public ChangingSource(params (string Path, string Text)[] files)
    {
        Texts = files.ToDictionary(file => new FileId(file.Path), file => file.Text);
    }

    public Dictionary<FileId, string> Texts { get; }

    public List<FileId> Reads { get; } = [];

    public FileText Read(FileId file)
    {
        Reads.Add(file);
        return Texts.TryGetValue(file, out var text) ? FileText.Of(text) : FileText.None("no such file");
    }

    public IReadOnlyList<FileId> RigFilesUnder(string folder) =>
        [.. Texts.Keys.Where(file => file.Path.EndsWith(".rig", StringComparison.Ordinal) && FilePaths.IsUnder(file, [folder])).OrderBy(file => file.Path, StringComparer.Ordinal)];
}

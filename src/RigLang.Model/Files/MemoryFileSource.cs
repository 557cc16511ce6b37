using System.Collections.Immutable;

namespace RigLang.Model.Files;

/// <summary>Files that are only in memory: for tests, for text from standard input, and for a revision's tree once it was read.</summary>
public sealed class MemoryFileSource(ImmutableDictionary<FileId, string> texts) : IFileSource
{
    public MemoryFileSource(params (string Path, string Text)[] files)
        : this(files.ToImmutableDictionary(file => new FileId(file.Path), file => file.Text))
    {
    }

    public FileText Read(FileId file) => texts.TryGetValue(file, out var text) ? FileText.Of(text) : FileText.None("no such file");

    public IReadOnlyList<FileId> RigFilesUnder(string folder) =>
        [.. texts.Keys.Where(file => file.Path.EndsWith(".rig", StringComparison.Ordinal) && FilePaths.IsUnder(file, [folder])).OrderBy(file => file.Path, StringComparer.Ordinal)];
}

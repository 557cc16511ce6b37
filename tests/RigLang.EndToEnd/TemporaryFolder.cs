namespace RigLang.EndToEnd;

/// <summary>A folder that goes with the test; it may start as a copy of an example.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public TemporaryFolder(string? example = null)
    {
        Path = Directory.CreateTempSubdirectory("rig files ").FullName;
        if (example is not null)
        {
            Copy(System.IO.Path.Combine(Repository.Examples, example), Path);
        }
    }

    public string Path { get; }

    public string Read(string name) => File.ReadAllText(System.IO.Path.Combine(Path, name));

    public void Write(string name, string text) => File.WriteAllText(Prepared(name), text);

    public void Write(string name, byte[] bytes) => File.WriteAllBytes(Prepared(name), bytes);

    /// <summary>Replaces text that must be there.</summary>
    public void Replace(string name, string old, string by)
    {
        var text = Read(name);
        text.Should().Contain(old);
        Write(name, text.Replace(old, by, StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private string Prepared(string name)
    {
        var file = System.IO.Path.Combine(Path, name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(file)!);
        return file;
    }

    private static void Copy(string from, string to)
    {
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = System.IO.Path.Combine(to, System.IO.Path.GetRelativePath(from, file));
            Directory.CreateDirectory(System.IO.Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }
}

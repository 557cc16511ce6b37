using System.Text;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Tests;

/// <summary>Runs the program in a folder of its own, in this process.</summary>
public sealed class Cli : IDisposable
{
    public Cli()
    {
        Folder = Directory.CreateTempSubdirectory("riglang-").FullName;
        // The folder's own wall: without it the search for one would climb out of the test.
        Directory.CreateDirectory(Path.Combine(Folder, ".git"));
    }

    public string Folder { get; }

    public Cli With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    public Cli With(string path, byte[] bytes)
    {
        var full = Path.Combine(Folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
        return this;
    }

    public string Read(string path) => File.ReadAllText(Path.Combine(Folder, path));

    public Task<Run> Run(params string[] arguments) => RunIn(Folder, "", arguments);

    public Task<Run> RunWithInput(string input, params string[] arguments) => RunIn(Folder, input, arguments);

    /// <summary>Runs in any folder: the examples, which other tests read too.</summary>
    public static async Task<Run> RunIn(string folder, string input, params string[] arguments)
    {
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        int code;
        using (var terminal = new Terminal(folder, () => new MemoryStream(Encoding.UTF8.GetBytes(input)), output, error))
        {
            code = await RigLangProgram.RunAsync(arguments, terminal);
        }

        return new Run(code, Encoding.UTF8.GetString(output.ToArray()), Encoding.UTF8.GetString(error.ToArray()));
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

/// <summary>What a run came to.</summary>
public sealed record Run(int Code, string Out, string Error)
{
    /// <summary>What was said of trouble, put back into one line: where it breaks is of no matter to what it says.</summary>
    public string ErrorWords => string.Join(' ', Error.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>The output as one line with single blanks, for words that may be broken anywhere.</summary>
    public string Flat => string.Join(' ', Out.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    public IEnumerable<string> Lines => Out.Split('\n');
}

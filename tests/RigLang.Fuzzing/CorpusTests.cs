using System.Runtime.CompilerServices;
using RigLang.Fuzzing.Targets;

namespace RigLang.Fuzzing;

/// <summary>What the fuzzer found worth keeping is tried again in every test run, together with a fixed number of changes to it.</summary>
public class CorpusTests
{
    public static TheoryData<string> Targets => [.. FuzzTargets.All.Select(target => target.Name)];

    [Theory]
    [MemberData(nameof(Targets))]
    public void Every_input_that_was_kept_holds_the_promises(string name)
    {
        var target = FuzzTargets.Find(name);
        var inputs = Inputs(name);
        inputs.Should().NotBeEmpty();
        foreach (var (path, bytes) in inputs)
        {
            var run = () => target.Run(bytes);
            run.Should().NotThrow(path);
        }
    }

    [Theory]
    [InlineData("lines", 3000)]
    [InlineData("check", 600)]
    [InlineData("format", 3000)]
    [InlineData("track", 2000)]
    [InlineData("framing", 60)] // a broken frame ends the server only after its patience for answers that are owed
    public void So_do_thousands_of_changes_to_them(string name, int count)
    {
        var target = FuzzTargets.Find(name);
        var inputs = Inputs(name);
        var random = new Random(20_261_125);
        for (var i = 0; i < count; i++)
        {
            var bytes = Mutation.Of(inputs, random);
            var run = () => target.Run(bytes);
            run.Should().NotThrow("change {0} is {1}", i, Convert.ToBase64String(bytes));
        }
    }

    private static List<(string Path, byte[] Bytes)> Inputs(string target) =>
        [.. Directory.EnumerateFiles(Path.Combine(Folder(), "Corpus", target)).Order(StringComparer.Ordinal).Select(path => (path, File.ReadAllBytes(path)))];

    private static string Folder([CallerFilePath] string path = "") => Path.GetDirectoryName(path)!;
}

using System.Text;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Tests;

public sealed class TroubleTests
{
    [Fact]
    public async Task A_fault_of_the_program_is_told_in_a_few_words_and_never_as_a_trace()
    {
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        int code;
        using (var terminal = new Terminal(Path.GetTempPath(), () => throw new InvalidOperationException("made for this test"), output, error))
        {
            code = await RigLangProgram.RunAsync(["format", "-"], terminal);
        }

        code.Should().Be(3);
        output.Length.Should().Be(0);
        var words = Encoding.UTF8.GetString(error.ToArray());
        words.Should().StartWith("This is a fault of riglang").And.Contain("made for this test").And.NotContain("   at ");
    }

    [Fact]
    public async Task Output_that_can_not_be_written_ends_with_3()
    {
        using var error = new MemoryStream();
        int code;
        using (var terminal = new Terminal(Path.GetTempPath(), () => Stream.Null, new FullDisk(), error))
        {
            code = await RigLangProgram.RunAsync(["--help"], terminal);
        }

        code.Should().Be(3);
        Encoding.UTF8.GetString(error.ToArray()).Should().Contain("can't be written");
    }

    private sealed class FullDisk : MemoryStream
    {
        public override void Write(ReadOnlySpan<byte> buffer) => throw new IOException("No space left on device");

        public override void Write(byte[] buffer, int offset, int count) => throw new IOException("No space left on device");
    }
}

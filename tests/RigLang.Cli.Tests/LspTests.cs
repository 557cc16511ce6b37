using System.Text;

namespace RigLang.Cli.Tests;

public sealed class LspTests
{
    [Fact]
    public async Task Serves_a_client_and_writes_nothing_but_messages()
    {
        var input = Message("""{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":null,"rootUri":null,"capabilities":{}}}""")
            + Message("""{"jsonrpc":"2.0","id":2,"method":"shutdown"}""") + Message("""{"jsonrpc":"2.0","method":"exit"}""");

        var run = await Cli.RunIn(Path.GetTempPath(), input, "lsp", "--stdio");

        run.Code.Should().Be(0);
        run.Error.Should().BeEmpty();
        run.Out.Should().StartWith("Content-Length: ").And.Contain("\"name\":\"riglang\"").And.Contain($"\"version\":\"{RigLangProgram.Version}\"");
        run.Out.Split("Content-Length: ").Should().HaveCount(3, "two answers and nothing between them");
    }

    [Fact]
    public async Task Ends_with_its_input() => (await Cli.RunIn(Path.GetTempPath(), "", "lsp")).Code.Should().Be(1, "a client that goes without a word has failed");

    private static string Message(string json) => $"Content-Length: {Encoding.UTF8.GetByteCount(json)}\r\n\r\n{json}";
}

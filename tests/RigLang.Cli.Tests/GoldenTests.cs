namespace RigLang.Cli.Tests;

public sealed class GoldenTests
{
    public static TheoryData<string, string[]> Cases => new()
    {
        { "help", ["--help"] },
        { "help-check", ["check", "--help"] },
        { "help-show", ["show", "--help"] },
        { "help-explain", ["explain", "--help"] },
        { "help-compare", ["compare", "--help"] },
        { "help-format", ["format", "--help"] },
        { "help-lsp", ["lsp", "--help"] },
        { "explain-fact", ["explain", "item"] },
        { "explain-check", ["explain", "RL901"] },
        { "explain-unit", ["explain", "psi"] },
        { "check-broken", ["check", "broken"] },
        { "check-journey", ["check", "journey"] },
        { "check-missing", ["check", "broken/gone.rig"] },
        { "show-unknown", ["show", "cost"] },
        { "usage", ["check", "--strickt"] },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public async Task The_terminal_shows_what_was_read_and_agreed(string name, string[] arguments)
    {
        var run = await Cli.RunIn(Path.Combine(Golden.Folder, "files"), "", arguments);

        Golden.Holds(name, $"$ riglang {string.Join(' ', arguments)}\n{run.Out}{run.Error}[ends with {run.Code}]\n");
    }
}

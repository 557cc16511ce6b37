using System.CommandLine;
using RigLang.Cli.Files;
using RigLang.Cli.Serving;
using RigLang.Cli.Terminals;
using RigLang.Editing;
using RigLang.Editing.Workspaces;
using RigLang.LanguageServer;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang lsp</c>.</summary>
internal static class LspCommand
{
    public static Command Create(Terminal terminal)
    {
        // Editors add --stdio to the command of any server; it says what is so anyway.
        var stdio = new Option<bool>("--stdio") { Description = "What it does anyway: some editors say so." };
        var command = new Command("lsp", "Serve an editor: the Language Server Protocol over standard input and output.") { stdio };
        command.SetAction((_, cancel) => RunAsync(terminal, cancel));
        return command;
    }

    private static async Task<int> RunAsync(Terminal terminal, CancellationToken cancel)
    {
        var input = terminal.OpenInput();
        await using (input.ConfigureAwait(false))
        {
            return await LanguageServerHost.RunAsync(input, terminal.OpenOutput(), () => new EditorWorkspace(new DiskFileSource()), Options(terminal), cancel).ConfigureAwait(false);
        }
    }

    private static LanguageServerOptions Options(Terminal terminal) => new()
    {
        Version = RigLangProgram.Version,
        CheckPage = CheckPages.AddressOf,
        OnSettings = (workspace, settings) =>
        {
            if (workspace is EditorWorkspace editor)
            {
                editor.Units = settings.UnitSystem switch
                {
                    UnitSystem.Metric => UnitHabit.Metric,
                    UnitSystem.Us => UnitHabit.Us,
                    _ => UnitHabit.AsWritten,
                };
                editor.Practice = settings.Practice;
                editor.Severities = settings.Severities.ByCheck;
            }
        },
        OnFailure = fault =>
        {
            if (terminal.ShowsTraces)
            {
                Console.Error.WriteLine(fault);
            }
        },
    };
}

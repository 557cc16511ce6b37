using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;
using RigLang.Cli.Commands;
using RigLang.Cli.Terminals;

namespace RigLang.Cli;

/// <summary>The program, apart from the process it runs in.</summary>
public static class RigLangProgram
{
    /// <summary>As <c>--version</c> shows it.</summary>
    public static string Version { get; } =
        typeof(RigLangProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "0";

    /// <summary>Carries out a command line.</summary>
    /// <returns>One of <see cref="ExitCodes"/>; never throws.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> arguments, Terminal terminal, CancellationToken cancel = default)
    {
        try
        {
            var parsed = CommandTree.Create(terminal).Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0 && parsed.Action is ParseErrorAction)
            {
                UsageTrouble.Print(terminal.Error, parsed);
                return ExitCodes.CouldNotRun;
            }

            var code = await parsed.InvokeAsync(new InvocationConfiguration { EnableDefaultExceptionHandler = false }, cancel).ConfigureAwait(false);
            terminal.Flush();
            return code;
        }
        catch (OperationCanceledException)
        {
            return ExitCodes.CouldNotRun;
        }
        catch (IOException gone) when (gone is not FileNotFoundException)
        {
            // The disk is full, or gone: nothing is wrong with the program.
            terminal.Error.Wrapped(2, "The output can't be written: ", gone.Message);
            return ExitCodes.CouldNotRun;
        }
#pragma warning disable CA1031 // The last catch of the program: a user is never shown a stack trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            ReportFault(terminal, fault);
            return ExitCodes.CouldNotRun;
        }
    }

    private static void ReportFault(Terminal terminal, Exception fault)
    {
        var cause = fault is AggregateException { InnerException: { } inner } ? inner : fault;
        terminal.Error.Wrapped(
            2,
            new Piece("This is a fault of riglang", Ink.Error),
            $" {Version}, not of your files: {cause.GetType().Name}: {cause.Message} Please send this line with the command and the files it was given; ",
            "RIGLANG_DEBUG=1 before the command shows where it happened.");
        if (terminal.ShowsTraces)
        {
            foreach (var line in cause.ToString().Split('\n'))
            {
                terminal.Error.Line(line.TrimEnd('\r'));
            }
        }
    }
}

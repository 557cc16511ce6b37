using System.CommandLine;
using System.CommandLine.Invocation;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang --version</c>.</summary>
internal sealed class VersionLine(Terminal terminal) : SynchronousCommandLineAction
{
    public override int Invoke(ParseResult parseResult)
    {
        terminal.Out.Line($"riglang {RigLangProgram.Version}");
        return ExitCodes.Fine;
    }
}

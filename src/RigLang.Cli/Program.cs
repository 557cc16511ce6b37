using RigLang.Cli;
using RigLang.Cli.Terminals;

using var terminal = Terminal.OfProcess();
return await RigLangProgram.RunAsync(args, terminal).ConfigureAwait(false);

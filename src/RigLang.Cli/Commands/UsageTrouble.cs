using System.CommandLine;
using System.CommandLine.Parsing;
using RigLang.Cli.Terminals;
using RigLang.Syntax;

namespace RigLang.Cli.Commands;

/// <summary>Says what is the matter with a command line, and where help is.</summary>
internal static class UsageTrouble
{
    public static void Print(Printout print, ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        if (parsed.Tokens.Count == 0)
        {
            HelpPage.Print(print, command);
            return;
        }

        if (parsed.UnmatchedTokens is [var word, ..])
        {
            print.Wrapped(2, word.StartsWith('-') ? UnknownOption(word, parsed.CommandResult) : UnknownCommand(word, command));
        }
        else
        {
            foreach (var error in parsed.Errors.Select(error => error.Message).Distinct())
            {
                print.Wrapped(2, error);
            }
        }

        print.Wrapped(2, $"`riglang {(command is RootCommand ? "" : command.Name + " ")}--help` shows what there is.");
    }

    public static string UnknownOption(string word, CommandResult? command)
    {
        var known = (command?.Command.Options ?? []).Select(option => option.Name).Append("--help");
        return $"`{word}` is no option here.{Meant(word, known)}";
    }

    private static string UnknownCommand(string word, Command command) =>
        command is RootCommand ? $"`{word}` is no command.{Meant(word, command.Subcommands.Where(sub => !sub.Hidden).Select(sub => sub.Name))}" : $"`{word}` is one word too many.";

    private static string Meant(string word, IEnumerable<string> known) => Spelling.Nearest(word, known) is { } near ? $" Did you mean `{near}`?" : "";
}

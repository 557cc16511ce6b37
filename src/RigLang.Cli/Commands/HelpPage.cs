using System.CommandLine;
using System.CommandLine.Invocation;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Commands;

/// <summary>The page that <c>--help</c> shows, made from the declared commands; it fits the terminal and never a column more.</summary>
internal sealed class HelpPage(Terminal terminal) : SynchronousCommandLineAction
{
    private const int Indent = 2;

    public override bool Terminating => true;

    public override int Invoke(ParseResult parseResult)
    {
        Print(terminal.Out, parseResult.CommandResult.Command);
        return ExitCodes.Fine;
    }

    public static void Print(Printout print, Command command)
    {
        print.Wrapped(0, command.Description ?? "");
        print.Line();
        var isRoot = command is RootCommand;
        Title(print, "Usage");
        print.Wrapped(Indent + 4, new string(' ', Indent), UsageOf(command));
        if (isRoot)
        {
            Rows(print, "Commands", command.Subcommands.Where(sub => !sub.Hidden).Select(sub => (sub.Name, sub.Description ?? "")));
        }

        Rows(print, "Arguments", command.Arguments.Select(argument => (argument.HelpName ?? argument.Name, argument.Description ?? "")));
        Rows(print, "Options", OptionsOf(command).Where(option => !option.Hidden).Select(option => (Names(option), option.Description ?? "")));
        foreach (var (title, lines) in Examples.Of(command.Name, isRoot))
        {
            print.Line();
            Title(print, title);
            foreach (var line in lines)
            {
                print.Line(new string(' ', Indent), line);
            }
        }
    }

    private static string UsageOf(Command command)
    {
        if (command is RootCommand)
        {
            return "riglang COMMAND …";
        }

        var words = command.Arguments.Select(argument => (argument.HelpName ?? argument.Name) is var name && argument.Arity.MinimumNumberOfValues == 0
            ? $"[{name}{(argument.Arity.MaximumNumberOfValues > 1 ? " …" : "")}]"
            : name);
        return string.Join(' ', words.Prepend($"riglang {command.Name}").Append("[options]"));
    }

    private static IEnumerable<Option> OptionsOf(Command command) =>
        command is RootCommand ? command.Options : command.Options.Concat(command.Parents.OfType<RootCommand>().SelectMany(root => root.Options.Where(option => option.Recursive)));

    private static string Names(Option option)
    {
        var names = string.Join(", ", option.Aliases.Where(alias => !alias.StartsWith('/') && alias != "-?").Append(option.Name).Distinct().OrderBy(name => name.Length));
        return option.HelpName is { } value ? $"{names} {value}" : names;
    }

    private static void Title(Printout print, string title) => print.Line(new Piece(title, Ink.Strong));

    private static void Rows(Printout print, string title, IEnumerable<(string Name, string Text)> rows)
    {
        var all = rows.ToList();
        if (all.Count == 0)
        {
            return;
        }

        print.Line();
        Title(print, title);
        var width = all.Max(row => row.Name.Length) + 2;
        foreach (var (name, text) in all)
        {
            print.Wrapped(Indent + width, new string(' ', Indent), name, new string(' ', width - name.Length), text);
        }
    }
}

using System.CommandLine;
using System.CommandLine.Help;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Commands;

/// <summary>All commands. A new one is added here once.</summary>
internal static class CommandTree
{
    public static RootCommand Create(Terminal terminal)
    {
        var root = new RootCommand("Matches tow vehicles and trailers from plain-text descriptions: loads, ratings, handling, range.")
        {
            CheckCommand.Create(terminal),
            ShowCommand.Create(terminal),
            PlanCommand.Create(terminal),
            ExplainCommand.Create(terminal),
            BesideCommand.Create(terminal),
            CompareCommand.Create(terminal),
            FormatCommand.Create(terminal),
            LspCommand.Create(terminal),
            ReferenceCommand.Create(terminal),
        };
        foreach (var option in root.Options)
        {
            switch (option)
            {
                case HelpOption help:
                    help.Action = new HelpPage(terminal);
                    help.Description = "Show this page, or a command's own.";
                    break;
                case VersionOption version:
                    version.Action = new VersionLine(terminal);
                    version.Description = "Show the version.";
                    break;
            }
        }

        return root;
    }
}

using System.CommandLine;
using RigLang.Analysis.Checks;
using RigLang.Analysis.Results;
using RigLang.Cli.Explaining;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Quantities;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang explain</c>.</summary>
internal static class ExplainCommand
{
    public static Command Create(Terminal terminal)
    {
        var word = new Argument<string>("word")
        {
            HelpName = "WORD",
            Description = "A check's code or slug, a fact, a result, a block, a unit; or a word that is used for one of them elsewhere.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var list = new Option<string>("--list") { HelpName = "checks|facts|results|units", Description = "List all of a sort, each with a line." };
        list.AcceptOnlyFromAmong("checks", "facts", "results", "units");
        var of = new Option<string[]>("--of")
        {
            HelpName = "[KIND] NAME",
            Description = "With a result: why it is what it is for this rig, trip or weighing, down to the lines of the files.",
            Arity = new ArgumentArity(1, 2),
            AllowMultipleArgumentsPerToken = true,
        };
        var within = new Option<string>("--in") { HelpName = "PATH", Description = "Where to look for the name; the current folder if nothing is said." };
        var all = new Option<bool>("--all") { Description = "With `--of`: everything that would change the result, not only what does most." };
        var json = new Option<bool>("--json") { Description = "With `--of`: write all reasons as JSON, for other programs." };
        var command = new Command("explain", "Explain a check, fact, result or unit; or why a result is what it is.") { word, of, within, all, json, list };
        command.Validators.Add(result =>
        {
            if (result.GetValue(of) is not { Length: > 0 } && (result.GetValue(json) || result.GetValue(all)))
            {
                result.AddError("`--all` and `--json` tell the reasons of one result: say whose with `--of NAME`.");
            }
        });
        command.SetAction((arguments, cancel) => Task.FromResult(arguments.GetValue(of) is { Length: > 0 } names
            ? WhyCommand.Run(terminal, arguments.GetValue(word), SubjectQuery.Of(names, arguments.GetValue(within), terminal.Folder), arguments.GetValue(all), arguments.GetValue(json), cancel)
            : Run(terminal, arguments.GetValue(word), arguments.GetValue(list))));
        return command;
    }

    private static int Run(Terminal terminal, string? word, string? list)
    {
        if (list is not null)
        {
            List(terminal.Out, list);
            return ExitCodes.Fine;
        }

        if (string.IsNullOrWhiteSpace(word))
        {
            terminal.Error.Wrapped(2, "Which word? For instance `riglang explain tongue-ratio`, or `riglang explain --list facts`.");
            return ExitCodes.CouldNotRun;
        }

        var articles = Lexicon.Find(word);
        if (articles.Count == 0 && Lexicon.FindByOtherName(word) is { Count: > 0 } facts)
        {
            terminal.Out.Wrapped(2, $"`{word}` is called {string.Join(" or ", facts.Select(fact => $"`{fact.Keyword}`").Distinct())} here.");
            terminal.Out.Line();
            articles = Articles.Merged(facts.Select(Articles.Of));
        }

        if (articles.Count == 0)
        {
            var near = Lexicon.Nearest(word);
            terminal.Error.Wrapped(2, $"Nothing is called `{word}`.", near is null ? "" : $" Did you mean `{near}`?");
            terminal.Error.Wrapped(2, "`riglang explain --list checks`, `facts`, `results` or `units` lists what there is.");
            return ExitCodes.CouldNotRun;
        }

        for (var index = 0; index < articles.Count; index++)
        {
            if (index > 0)
            {
                terminal.Out.Line();
            }

            ArticlePrinter.Print(terminal.Out, articles[index]);
        }

        return ExitCodes.Fine;
    }

    private static void List(Printout print, string sort)
    {
        switch (sort)
        {
            case "checks":
                Rows(print, AnalysisChecks.Declarations.Select(check => ($"{check.Code} {check.Slug}", check.Summary)));
                break;
            case "results":
                Rows(print, Catalogue.Results.Select(result => (result.Name, $"{result.Title}, of {Articles.Scope(result.Scope)}")));
                break;
            case "units":
                Rows(print, UnitTable.Spellings.Select(spelling => (spelling, UnitTable.Find(spelling) is { } unit && unit.Name != spelling ? unit.Name : "")));
                break;
            default:
                foreach (var block in Lexicon.Facts.GroupBy(fact => fact.Home))
                {
                    print.Line(new Piece(block.Key.Path.Replace(".", ", ", StringComparison.Ordinal), Ink.Strong));
                    Rows(print, block.Select(fact => ($"  {fact.Keyword}", fact.Meaning)));
                }

                break;
        }
    }

    private static void Rows(Printout print, IEnumerable<(string Name, string Text)> rows)
    {
        var all = rows.ToList();
        var width = Math.Min(34, all.Max(row => Cells.Width(row.Name))) + 2;
        foreach (var (name, text) in all)
        {
            print.Wrapped(width, Cells.PadRight(name, width), text);
        }
    }
}

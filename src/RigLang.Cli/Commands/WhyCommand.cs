using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Explaining;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;
using RigLang.Syntax;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang explain RESULT --of NAME</c>.</summary>
internal static class WhyCommand
{
    public static int Run(Terminal terminal, string? word, SubjectQuery query, CancellationToken cancel)
    {
        if (word is null || Catalogue.FindResult(word) is not { } result)
        {
            var near = word is null ? null : Spelling.Nearest(word, Catalogue.Results.Select(known => known.Name));
            terminal.Error.Wrapped(2, word is null ? "Which result?" : $"No result is called `{word}`.", near is null ? "" : $" Did you mean `{near}`?");
            terminal.Error.Wrapped(2, "`riglang explain --list results` lists what there is.");
            return ExitCodes.CouldNotRun;
        }

        if (SubjectLookup.Find(terminal, query) is not { } lookup)
        {
            return ExitCodes.CouldNotRun;
        }

        var isAny = false;
        foreach (var subject in lookup.Subjects)
        {
            foreach (var node in subject.Parts.Select(result.Compute).OfType<Node<double>>().Where(node => node.Applies))
            {
                if (isAny)
                {
                    terminal.Out.Line();
                }

                isAny = true;
                terminal.Out.Line(new Piece(node.Subject.Title, Ink.Faint));
                var units = SubjectUnits.Of(node.Subject);
                new ReasonPrinter(terminal.Out, lookup.Shown).Print(ReasonTree.Of(lookup.Workspace, node, units));
                DoubtPrinter.Print(terminal.Out, result, node, units, cancel);
                MovePrinter.Print(terminal.Out, result, node, units, cancel);
            }
        }

        if (!isAny)
        {
            terminal.Error.Wrapped(2, $"`{result.Name}` is a result of {Articles.Scope(result.Scope)}; {lookup.Subjects[0].Declaration} has none.");
            return ExitCodes.CouldNotRun;
        }

        return ExitCodes.Fine;
    }
}

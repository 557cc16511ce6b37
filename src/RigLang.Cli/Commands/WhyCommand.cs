using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Explaining;
using RigLang.Cli.Json;
using RigLang.Cli.Showing;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;
using RigLang.Syntax;

namespace RigLang.Cli.Commands;

/// <summary><c>riglang explain RESULT --of NAME</c>.</summary>
internal static class WhyCommand
{
    public static int Run(Terminal terminal, string? word, SubjectQuery query, bool all, bool json, CancellationToken cancel)
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

        var nodes = lookup.Subjects.SelectMany(subject => subject.Parts).Select(result.Compute).OfType<Node<double>>().Where(node => node.Applies).ToList();
        if (nodes.Count == 0)
        {
            terminal.Error.Wrapped(2, $"`{result.Name}` is a result of {Articles.Scope(result.Scope)}; {lookup.Subjects[0].Declaration} has none.");
            return ExitCodes.CouldNotRun;
        }

        if (json)
        {
            var writer = new WhyJsonWriter(lookup.Workspace, lookup.Shown);
            JsonOutput.Write(
                terminal.OpenOutput(),
                new WhyDocument("riglang-explain", 1, RigLangProgram.Version, [.. nodes.Select(node => writer.Of(result, node, SubjectUnits.Of(node.Subject), cancel))]));
            return ExitCodes.Fine;
        }

        for (var index = 0; index < nodes.Count; index++)
        {
            var node = nodes[index];
            if (index > 0)
            {
                terminal.Out.Line();
            }

            terminal.Out.Line(new Piece(node.Subject.Title, Ink.Faint));
            var units = SubjectUnits.Of(node.Subject);
            new ReasonPrinter(terminal.Out, lookup.Shown).Print(ReasonTree.Of(lookup.Workspace, node, units));
            DoubtPrinter.Print(terminal.Out, result, node, units, cancel);
            MovePrinter.Print(terminal.Out, result, node, units, all, cancel);
        }

        return ExitCodes.Fine;
    }
}

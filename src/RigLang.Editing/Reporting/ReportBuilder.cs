using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Hovering;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Reporting;

/// <summary>Everything that is known of a file's rigs, trips, weighings and runs, or of one of them, as one Markdown text to read and print.</summary>
internal static class ReportBuilder
{
    /// <param name="subject"><c>rig coast</c>; null for all of the file.</param>
    /// <returns>Null when the file has no such declaration.</returns>
    public static string? Of(View view, LinkedFile linked, string? subject, CancellationToken cancel)
    {
        var declarations = linked.Declarations.Where(declaration => subject is null ? IsReported(declaration.Kind) : declaration.ToString() == subject).ToList();
        if (subject is not null && declarations.Count == 0)
        {
            return null;
        }

        var findings = FindingReport.Of(view.State, view.File, cancel);
        var text = new CardText().Paragraph($"# {subject ?? view.File.Name}");
        foreach (var declaration in declarations)
        {
            cancel.ThrowIfCancellationRequested();
            if (subject is null)
            {
                text.Paragraph($"## {declaration}");
            }

            text.Paragraph(DeclarationCard.Of(view, declaration, cancel).ToString());
            if (declaration.Kind == DeclarationKind.Rig)
            {
                text.Paragraph("### Room to each rating").Table(RatingTable.Of(view.State.Analysis.Rig(declaration)).Where(line => line.IsKnown).Select(RigCard.Row));
            }

            AddResults(text, view, declaration);
            AddFindings(text, view, declaration, findings);
        }

        return text + "\n";
    }

    private static bool IsReported(DeclarationKind kind) => kind is DeclarationKind.Rig or DeclarationKind.Trip or DeclarationKind.Weighing or DeclarationKind.Run;

    private static void AddResults(CardText text, View view, Declaration declaration)
    {
        var nodes = new List<Node>();
        foreach (var (subject, scope) in SubjectsOf(view, declaration))
        {
            var units = SubjectUnits.Of(subject, view.State.Units);
            var results = Catalogue.Of(scope).ToList();
            var rows = ResultLines.Rows(results, subject, units).ToList();
            if (rows.Count > 0)
            {
                text.Paragraph($"### {Phrase.Capital(subject.Title)}: results").Table(rows);
                nodes.AddRange(results.Select(result => result.Compute(subject)).OfType<Node>().Where(node => node.IsComputed));
            }
        }

        text.Paragraph(ResultLines.Estimates(nodes));
    }

    /// <summary>What the declaration stands for, and its axles, legs, stops, readings.</summary>
    private static IEnumerable<(ISubject Subject, ResultScope Scope)> SubjectsOf(View view, Declaration declaration)
    {
        var analysis = view.State.Analysis;
        switch (declaration.Kind)
        {
            case DeclarationKind.Rig:
                var rig = analysis.Rig(declaration);
                return rig.Axles.Select(axle => ((ISubject)axle, ResultScope.Axle)).Prepend((rig, ResultScope.Rig));
            case DeclarationKind.Trip when analysis.Trip(declaration) is { } trip:
                return trip.Legs.SelectMany(leg => leg.Stop is { } stop ? new (ISubject, ResultScope)[] { (leg, ResultScope.Leg), (stop, ResultScope.Stop) } : [(leg, ResultScope.Leg)])
                    .Prepend((trip, ResultScope.Trip));
            case DeclarationKind.Weighing when analysis.Weighing(declaration) is { } weighing:
                return weighing.Passes.SelectMany(pass => pass.Readings).Select(reading => ((ISubject)reading, ResultScope.Reading)).Prepend((weighing, ResultScope.Weighing));
            case DeclarationKind.Run when analysis.Run(declaration) is { } run:
                return [(run, ResultScope.Run)];
            default:
                return [];
        }
    }

    private static void AddFindings(CardText text, View view, Declaration declaration, IEnumerable<EditorFinding> findings)
    {
        var file = view.State.Workspace.Find(view.File)!;
        var first = file.FirstLineOf(declaration.Own.Syntax);
        var own = findings.Where(finding => finding.Range.Start.Line >= first && finding.Range.Start.Line < first + declaration.Own.Syntax.Lines.Length).ToList();
        if (own.Count > 0)
        {
            text.Paragraph("### Findings").Bullets(own.Select(finding => $"Line {finding.Range.Start.Line + 1}, {Word(finding.Severity)}: {finding.Message} ({finding.Check})"));
        }
    }

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}

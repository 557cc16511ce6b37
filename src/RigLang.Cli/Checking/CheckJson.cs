using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Cli.Json;
using RigLang.Model.Binding;
using RigLang.Model.Files;

namespace RigLang.Cli.Checking;

/// <summary>What <c>check --json</c> writes.</summary>
/// <param name="Format">Always <c>riglang-check</c>.</param>
/// <param name="Version">Of the format; 1.</param>
/// <param name="Riglang">The program's version.</param>
internal sealed record CheckDocument(
    string Format, int Version, string Riglang, SummaryJson Summary, ImmutableArray<CheckedFileJson> Files, ImmutableArray<ProblemJson> Problems);

/// <summary>Counts.</summary>
internal sealed record SummaryJson(int Errors, int Warnings, int Notes, int Accepted, int Files);

/// <summary>One file with what there is to say of it.</summary>
internal sealed record CheckedFileJson(string Path, ImmutableArray<FindingJson> Findings, ImmutableArray<AcceptedJson> Accepted);

/// <summary>A finding; <c>severity</c> is error, warning or note.</summary>
internal sealed record FindingJson(
    string Code, string Slug, string Severity, string Message, PlaceJson Place, ImmutableArray<RelatedJson> Related, ImmutableArray<FixJson> Fixes);

/// <summary>Another place that has to do with the finding.</summary>
internal sealed record RelatedJson(PlaceJson Place, string Message);

/// <summary>Texts to put in place of what stands there; where column and end column are one, the text is put in.</summary>
internal sealed record FixJson(string Title, ImmutableArray<EditJson> Edits);

/// <summary>One change of a fix.</summary>
internal sealed record EditJson(PlaceJson Place, string NewText);

/// <summary>A finding that an <c>allow</c> line accepts, and the reason it gives.</summary>
internal sealed record AcceptedJson(FindingJson Finding, PlaceJson Allow, string? Reason);

/// <summary>A path that couldn't be checked, and why.</summary>
internal sealed record ProblemJson(string Path, string Problem);

/// <summary>Makes the document of a run.</summary>
internal static class CheckJson
{
    public static void Write(Stream stream, CheckRun run, Func<FileId, string> shown) => JsonOutput.Write(stream, Of(run, shown));

    private static CheckDocument Of(CheckRun run, Func<FileId, string> shown) => new(
        "riglang-check",
        1,
        RigLangProgram.Version,
        new SummaryJson(run.Errors, run.Warnings, run.Notes, run.Accepted, run.Files.Count(file => file.Problem is null)),
        [.. run.Files.Where(file => file.Problem is null).Select(file => FileOf(run.Analysis, shown, file))],
        [.. run.Problems.Select(problem => new ProblemJson(problem.Path, problem.Words))]);

    private static CheckedFileJson FileOf(WorkspaceAnalysis analysis, Func<FileId, string> shown, CheckedFile file)
    {
        PlaceJson At(Place place) => PlaceJson.Of(analysis.Workspace, shown, place);
        return new CheckedFileJson(
            shown(file.Id),
            [.. file.Findings.Remaining.Select(finding => FindingOf(finding, At))],
            [.. file.Findings.Accepted.Select(pair => new AcceptedJson(FindingOf(pair.Finding, At), At(pair.Allow.Place), pair.Allow.WordOf("reason")))]);
    }

    private static FindingJson FindingOf(Finding finding, Func<Place, PlaceJson> at) => new(
        finding.Check.Code,
        finding.Check.Slug,
        FindingPrinter.Words(finding.Severity),
        finding.Message,
        at(finding.Place),
        [.. finding.Related.Select(related => new RelatedJson(at(related.Place), related.Message))],
        [.. finding.Fixes.Select(fix => new FixJson(fix.Title, [.. fix.Edits.Select(edit => new EditJson(at(edit.Place), edit.NewText))]))]);
}

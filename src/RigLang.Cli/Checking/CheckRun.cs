using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Analysis.Curing;
using RigLang.Cli.Files;
using RigLang.Model.Binding;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Cli.Checking;

/// <summary>Files checked, each with what there is to say of it, in the order in which they were asked for.</summary>
public sealed record CheckRun(WorkspaceAnalysis Analysis, ImmutableArray<CheckedFile> Files, ImmutableArray<InputProblem> Problems)
{
    public int Errors => Count(Severity.Error);

    public int Warnings => Count(Severity.Warning);

    public int Notes => Count(Severity.Note);

    public int Accepted => Files.Sum(file => file.Findings.Accepted.Length);

    /// <summary>Checks beside each other; a file that others use is read once.</summary>
    public static CheckRun Of(RigInputs inputs, IFileSource source, Func<FileId, string> shown, CancellationToken cancel)
    {
        var analysis = new WorkspaceAnalysis(inputs.OpenWorkspace(source)).Solved;
        var files = new CheckedFile[inputs.Files.Length];
        Parallel.For(0, files.Length, new ParallelOptions { CancellationToken = cancel }, index =>
        {
            var id = inputs.Files[index];
            var (_, problem) = analysis.Workspace.Read(id);
            files[index] = new CheckedFile(id, problem, problem is null ? ComputedFixes.AddTo(analysis, analysis.Findings(id, cancel), cancel) : FileFindings.None);
        });
        var unreadable = files.Where(file => file.Problem is not null).Select(file => new InputProblem(shown(file.Id), file.Problem!));
        return new CheckRun(analysis, [.. files], [.. inputs.Problems, .. unreadable]);
    }

    /// <summary>The declarations of the checked files, in order.</summary>
    public IEnumerable<Declaration> Declarations => Files.SelectMany(file => Analysis.Workspace.Link(file.Id)?.Declarations ?? []);

    public int ExitCode(bool isStrict) =>
        !Problems.IsEmpty ? ExitCodes.CouldNotRun
        : Errors > 0 ? ExitCodes.Errors
        : isStrict && Warnings > 0 ? ExitCodes.Wanting
        : ExitCodes.Fine;

    private int Count(Severity severity) => Files.Sum(file => file.Findings.Remaining.Count(finding => finding.Severity == severity));
}

/// <summary>One file and its findings, or why it couldn't be read.</summary>
public sealed record CheckedFile(FileId Id, string? Problem, FileFindings Findings);

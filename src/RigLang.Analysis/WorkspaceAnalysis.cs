using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Analysis.Checks;
using RigLang.Analysis.Checks.Questions;
using RigLang.Analysis.Checks.Runs;
using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Checks.Weighings;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Analysis;

/// <summary>
/// Results and findings for one state of a workspace. A study is taken over from the state before while all its parts are the same objects, so a keystroke
/// costs the rigs that read the edited declaration. Safe to use from several threads.
/// </summary>
public sealed class WorkspaceAnalysis
{
    private readonly ConcurrentDictionary<FileId, FileFindings> findings = new();
    private readonly ConcurrentDictionary<FileId, ImmutableArray<Study>> asking = new();
    private readonly ConditionalWeakTable<object, StrongBox<ImmutableArray<Finding>>> kept;
    private readonly bool isSolved;
    private readonly ConditionalWeakTable<Study, Study> solutions;
    private readonly StudyShelf<RigParts, RigStudy> rigs;
    private readonly StudyShelf<WeighingParts, WeighingStudy> weighings;
    private readonly StudyShelf<TripParts, TripStudy> trips;
    private readonly StudyShelf<RunParts, RunStudy> runs;
    private readonly StudyShelf<RunSetParts, RunSetStudy> runSets;

    private WorkspaceAnalysis? solved;

    public WorkspaceAnalysis(Workspace workspace)
        : this(workspace, null)
    {
    }

    private WorkspaceAnalysis(Workspace workspace, WorkspaceAnalysis? before, bool isSolved = false)
    {
        this.isSolved = isSolved;
        solutions = before?.solutions ?? [];
        Workspace = workspace;
        kept = before?.kept ?? [];
        rigs = before?.rigs ?? new((one, other) => one.SameAs(other));
        weighings = before?.weighings ?? new((one, other) => one.SameAs(other));
        trips = before?.trips ?? new((one, other) => one.SameAs(other));
        runs = before?.runs ?? new((one, other) => one.SameAs(other));
        runSets = before?.runSets ?? new((one, other) => one.SameAs(other));
    }

    public Workspace Workspace { get; }

    /// <summary>
    /// The same state with its questions answered: where a line asks with <c>? for …</c>, the value found holds. Answers are found when a study is first asked for,
    /// and kept with it; a study that asks nothing is the same object here and there.
    /// </summary>
    public WorkspaceAnalysis Solved => isSolved ? this : solved ?? Interlocked.CompareExchange(ref solved, new(Workspace, this, isSolved: true), null) ?? solved;

    /// <summary>The analysis of a next state.</summary>
    public WorkspaceAnalysis With(Workspace workspace) => new(workspace, this, isSolved);

    /// <summary>The study of a rig.</summary>
    public RigStudy Rig(Declaration rig) => Rig(RigParts.Of(Workspace, rig));

    /// <summary>The study of a rig with other parts than it names: the load of another day.</summary>
    public RigStudy Rig(RigParts parts) => Answered(RigAsWritten(parts));

    /// <summary>The study of a weighing; null while its rig isn't found.</summary>
    public WeighingStudy? Weighing(Declaration weighing) => WeighingAsWritten(weighing) is { } study ? Answered(study) : null;

    /// <summary>The study of a trip; null while its rig isn't found.</summary>
    public TripStudy? Trip(Declaration trip) => TripAsWritten(trip) is { } study ? Answered(study) : null;

    /// <summary>The study of a logged drive; null while its rig isn't found.</summary>
    public RunStudy? Run(Declaration run) => RunAsWritten(run) is { } study ? Answered(study) : null;

    /// <summary>All logged drives of a rig that its file shows, or that a run's file shows of the run's rig; null where there is none.</summary>
    public RunSetStudy? RunSet(Declaration from) => RunSetParts.Of(Workspace, from) is { } parts ? RunSet(parts) : null;

    /// <summary>Everything to report about a file, in the order of its lines.</summary>
    public FileFindings Findings(FileId file, CancellationToken cancel = default) => findings.GetOrAdd(file, _ => Find(file, cancel));

    /// <summary>Whether anything that the file declares, or parts of it, has questions that haven't been answered yet.</summary>
    public bool HasOpenQuestions(FileId file) => OpenIn(file).Any();

    /// <summary>Answers the questions of what a file declares, so that they are there when the solved analysis is asked.</summary>
    /// <exception cref="OperationCanceledException">It was called off.</exception>
    public void Answer(FileId file, CancellationToken cancel)
    {
        foreach (var study in OpenIn(file))
        {
            solutions.TryAdd(study, Solver.Solve(study, cancel));
        }
    }

    private IEnumerable<Study> OpenIn(FileId file) => asking.GetOrAdd(file, id => [.. AsWritten(id).Where(study => study.Asks)]).Where(study => !solutions.TryGetValue(study, out _));

    private IEnumerable<Study> AsWritten(FileId file) => (Workspace.Link(file)?.Declarations ?? []).Select(declaration => declaration.Kind switch
    {
        DeclarationKind.Rig => RigAsWritten(RigParts.Of(Workspace, declaration)),
        DeclarationKind.Trip => TripAsWritten(declaration),
        DeclarationKind.Weighing => WeighingAsWritten(declaration),
        DeclarationKind.Run => RunAsWritten(declaration),
        _ => (Study?)null,
    }).OfType<Study>();

    private TStudy Answered<TStudy>(TStudy study)
        where TStudy : Study => isSolved && study.Asks ? (TStudy)solutions.GetValue(study, asked => Solver.Solve(asked)) : study;

    private RigStudy RigAsWritten(RigParts parts) => rigs.Get(parts.Rig, parts, parts => new RigStudy(parts));

    private WeighingStudy? WeighingAsWritten(Declaration weighing) =>
        WeighingParts.Of(Workspace, weighing) is { Rig: not null } parts ? weighings.Get(weighing, parts, parts => new WeighingStudy(parts)) : null;

    private TripStudy? TripAsWritten(Declaration trip) =>
        TripParts.Of(Workspace, trip) is { Rig: not null } parts ? trips.Get(trip, parts, parts => new TripStudy(parts, RigAsWritten(parts.Rig!))) : null;

    private RunStudy? RunAsWritten(Declaration run) => RunParts.Of(Workspace, run) is { Rig: not null } parts ? Run(parts) : null;

    private RunStudy Run(RunParts parts) => runs.Get(parts.Run, parts, parts => new RunStudy(parts, new RigStudy(parts.Rig!)));

    private RunSetStudy RunSet(RunSetParts parts) => runSets.Get(parts.From, parts, parts => new RunSetStudy(parts, RigAsWritten(parts.Rig), [.. parts.Runs.Select(Run)]));

    private FileFindings Find(FileId file, CancellationToken cancel)
    {
        if (Workspace.Link(file) is not { } linked)
        {
            return FileFindings.None;
        }

        var remaining = ImmutableArray.CreateBuilder<Finding>();
        var accepted = ImmutableArray.CreateBuilder<(Finding, Fact)>();
        var byDeclaration = linked.Findings.ToLookup(finding => finding.Place.Declaration);
        foreach (var own in linked.File.Declarations)
        {
            cancel.ThrowIfCancellationRequested();
            var all = own.Findings.Concat(byDeclaration[own.Syntax]);
            if (byDeclaration[own.Syntax].Any(static finding => finding.Check == NameTaken.Declaration))
            {
                // No name finds it. A line of a rig without its indent opens a second vehicle, too, whose lines are the rig's.
                remaining.AddRange(InOrder(all.Where(static finding => finding.Check != KeywordElsewhere.Declaration && finding.Check != UnknownKeyword.Declaration)));
                continue;
            }

            if (linked.Of(own) is not { } declaration)
            {
                remaining.AddRange(InOrder(all));
                continue;
            }

            var (left, allowed) = Allowances.Apply(declaration, all.Concat(RunChecksOf(declaration, cancel)), () => Judgeable.Is(this, declaration));
            remaining.AddRange(InOrder(left.Select(finding => InOwnFile(own, finding))));
            accepted.AddRange(allowed);
        }

        return new FileFindings(remaining.ToImmutable(), accepted.ToImmutable());
    }

    /// <summary>Those of one declaration, each once, by line and column.</summary>
    private static IEnumerable<Finding> InOrder(IEnumerable<Finding> findings) =>
        findings.DistinctBy(finding => (finding.Check.Code, finding.Place, finding.Message)).OrderBy(finding => finding.Place.Line).ThenBy(finding => finding.Place.Span.Start);

    /// <summary>What an inherited line shows belongs to the declaration that inherits it, whose file may be another one: it stands at its name then.</summary>
    private static Finding InOwnFile(OwnDeclaration own, Finding finding) => finding.Place.Declaration == own.Syntax
        ? finding
        : finding with { Place = own.NamePlace, Related = finding.Related.Insert(0, new Related(finding.Place, "inherited from here")), Fixes = [] };

    /// <summary>Only what looks at the other declarations in sight is run each time; the rest is kept with the declaration, or with the study, that it looks at.</summary>
    private IEnumerable<Finding> RunChecksOf(Declaration declaration, CancellationToken cancel) =>
        Kept<DeclarationCheck, Declaration>(declaration, (check, own) => check.Run(own), cancel)
            .Concat(declaration.Kind switch
            {
                DeclarationKind.Rig => Kept<RigCheck, RigStudy>(Rig(declaration), (check, rig) => check.Run(rig), cancel),
                DeclarationKind.Trip when Trip(declaration) is { } trip => Kept<TripCheck, TripStudy>(trip, (check, study) => check.Run(study), cancel),
                DeclarationKind.Weighing when Weighing(declaration) is { } weighing => Kept<WeighingCheck, WeighingStudy>(weighing, (check, study) => check.Run(study), cancel),
                DeclarationKind.Run when Run(declaration) is { } run => Kept<RunCheck, RunStudy>(run, (check, study) => check.Run(study), cancel),
                _ => [],
            })
            .Concat(declaration.Kind is DeclarationKind.Rig or DeclarationKind.Run && RunSetParts.ToReport(Workspace, declaration) is { } parts
                ? Kept<RunSetCheck, RunSetStudy>(RunSet(parts), (check, set) => check.Run(set), cancel)
                : [])
            .Concat(QuestionsOf(declaration))
            .Concat(AnalysisChecks.Of<WorkspaceCheck>().SelectMany(check => check.Run(Workspace, declaration)));

    private IEnumerable<Finding> QuestionsOf(Declaration declaration)
    {
        Study? study = !isSolved ? null : declaration.Kind switch
        {
            DeclarationKind.Rig => Rig(declaration),
            DeclarationKind.Trip => Trip(declaration),
            DeclarationKind.Weighing => Weighing(declaration),
            DeclarationKind.Run => Run(declaration),
            _ => null,
        };
        return study is null ? [] : study.AnswersOf(declaration.Block).SelectMany(answer => AnalysisChecks.Of<QuestionCheck>().SelectMany(check => check.Run(study, answer)));
    }

    private ImmutableArray<Finding> Kept<TCheck, TSubject>(TSubject subject, Func<TCheck, TSubject, IEnumerable<Finding>> run, CancellationToken cancel)
        where TCheck : Check
        where TSubject : class
    {
        if (kept.TryGetValue(subject, out var known))
        {
            return known.Value;
        }

        var found = ImmutableArray.CreateBuilder<Finding>();
        foreach (var check in AnalysisChecks.Of<TCheck>())
        {
            cancel.ThrowIfCancellationRequested();
            found.AddRange(run(check, subject));
        }

        return kept.GetValue(subject, _ => new StrongBox<ImmutableArray<Finding>>(found.ToImmutable())).Value;
    }
}

/// <summary>What there is to report about a file, and what was accepted with the line that accepts it.</summary>
public sealed record FileFindings(ImmutableArray<Finding> Remaining, ImmutableArray<(Finding Finding, Fact Allow)> Accepted)
{
    public static FileFindings None { get; } = new([], []);
}

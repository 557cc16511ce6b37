using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Analysis.Checks;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Curing;

/// <summary>
/// Fixes of which the number is solved for. A check declares its levers; here each number that they find is changed until the check is silent, the change is made
/// in a copy of the files, and what that leaves is checked again. Nothing of it runs before somebody asks; answers are kept with the state of the files.
/// </summary>
public static class ComputedFixes
{
    /// <summary>Nobody reads a longer list.</summary>
    private const int Most = 6;

    /// <summary>Of fixes that leave another error, which come last.</summary>
    private const int MostWithErrors = 2;

    /// <summary>Of one lever, those with the least change by its order.</summary>
    private const int MostOfLever = 3;

    private static readonly ConditionalWeakTable<WorkspaceAnalysis, ConcurrentDictionary<Finding, ImmutableArray<ComputedFix>>> Known = [];

    /// <summary>For a finding of this state of the files; the best first, those that leave a new error last. Empty where no number cures it.</summary>
    public static ImmutableArray<ComputedFix> Of(WorkspaceAnalysis analysis, Finding finding, CancellationToken cancel = default)
    {
        if (!IsPossible(finding))
        {
            return [];
        }

        var known = Known.GetOrCreateValue(analysis);
        if (!known.TryGetValue(finding, out var fixes))
        {
            known[finding] = fixes = Find(analysis, finding, cancel);
        }

        return fixes;
    }

    /// <summary>The findings with their computed fixes behind the others, for who shows all at once.</summary>
    public static FileFindings AddTo(WorkspaceAnalysis analysis, FileFindings findings, CancellationToken cancel = default) => findings with
    {
        Remaining = [.. findings.Remaining.Select(finding => Of(analysis, finding, cancel) is { IsEmpty: false } fixes ? finding with { Fixes = [.. finding.Fixes, .. fixes.Select(fix => fix.Fix)] } : finding)],
    };

    /// <summary>Whether the finding's check has levers at all; costs nothing.</summary>
    public static bool IsPossible(Finding finding) => AnalysisChecks.WithLevers(finding.Check.Code).Length > 0;

    private static ImmutableArray<ComputedFix> Find(WorkspaceAnalysis analysis, Finding finding, CancellationToken cancel)
    {
        if (StudyOf(analysis, finding) is not { } study || AnalysisChecks.WithLevers(finding.Check.Code).FirstOrDefault(check => Runs(check, study)) is not { } check)
        {
            return [];
        }

        var trial = new Trial(analysis, finding);
        var found = new List<ComputedFix>();
        // Who has a warning doesn't want an error for it.
        bool IsWorthIt(Outcome outcome) => outcome.NewErrors.IsEmpty || finding.Severity == Severity.Error;
        foreach (var lever in check.Cures.Where(lever => !lever.IsLastResort || found.Count == 0))
        {
            var ofLever = lever.Find(study, finding).SelectMany(handle => Solved(handle, study, check, finding, cancel))
                .Select(solved => (solved.Change, Effects: Effects.Words(check, finding, study, solved.Varied)));
            foreach (var (change, effects) in ofLever.Take(lever.IsLastResort ? 1 : MostOfLever))
            {
                cancel.ThrowIfCancellationRequested();
                if (trial.Judge(change) is { IsCured: true } outcome && IsWorthIt(outcome))
                {
                    found.Add(new ComputedFix(new Fix(effects.Length == 0 ? change.Words : $"{change.Words}: {effects}", change.Edits), outcome.NewErrors, outcome.NewWarnings));
                }
            }

            foreach (var insertion in study is TripStudy trip ? lever.Insert?.Invoke(trip, finding) ?? [] : [])
            {
                if (FirstThatCures(insertion, trial, check, finding, study, cancel) is { } fix && (fix.NewErrors.IsEmpty || finding.Severity == Severity.Error))
                {
                    found.Add(fix);
                }
            }
        }

        return
        [
            .. found.Where(fix => fix.NewErrors.IsEmpty).OrderBy(fix => fix.NewWarnings.Length).Take(Most),
            .. found.Where(fix => !fix.NewErrors.IsEmpty).OrderBy(fix => fix.NewErrors.Length).Take(MostWithErrors).Select(WithErrorsNamed),
        ];
    }

    private static ComputedFix WithErrorsNamed(ComputedFix fix) =>
        fix with { Fix = fix.Fix with { Title = $"{fix.Fix.Title}; leaves {string.Join(", ", fix.NewErrors.Distinct().Select(slug => $"`{slug}`"))}" } };

    private static IEnumerable<(Change Change, Study Varied)> Solved(Handle handle, Study study, Check check, Finding finding, CancellationToken cancel)
    {
        var tried = handle.With(handle.Now);
        bool IsCured(double value)
        {
            cancel.ThrowIfCancellationRequested();
            var varied = study.With(handle.With(tried, value));
            return !StillFound(check, varied, finding) && (Judgeable.ComesOut(varied) || !Judgeable.ComesOut(study));
        }

        var values = handle.Only is { } only ? (IsCured(only) ? [only] : [])
            : new[] { -1, 1 }.Select(sign => LeastChange.Find(handle, sign, IsCured)).OfType<double>();
        return values.Select(value => (handle.Put(value), study.With(handle.With(tried, value))));
    }

    private static ComputedFix? FirstThatCures(Insertion insertion, Trial trial, Check check, Finding finding, Study study, CancellationToken cancel)
    {
        foreach (var change in insertion.Changes)
        {
            cancel.ThrowIfCancellationRequested();
            if (trial.Judge(change) is { IsCured: true } outcome)
            {
                var effects = outcome.Study is { } after ? Effects.Words(check, finding, study, after) : "";
                return new ComputedFix(new Fix(effects.Length == 0 ? change.Words : $"{change.Words}: {effects}", change.Edits), outcome.NewErrors, outcome.NewWarnings);
            }
        }

        return null;
    }

    private static bool StillFound(Check check, Study study, Finding finding) => Run(check, study).Any(other => Trial.IsSame(other, finding));

    private static bool Runs(Check check, Study study) => (check, study) is (RigCheck, RigStudy) or (Checks.Trips.TripCheck, TripStudy);

    private static IEnumerable<Finding> Run(Check check, Study study) => (check, study) switch
    {
        (RigCheck ofRig, RigStudy rig) => ofRig.Run(rig),
        (Checks.Trips.TripCheck ofTrip, TripStudy trip) => ofTrip.Run(trip),
        _ => [],
    };

    /// <summary>The study that the finding's check looked at: of the declaration in which the finding stands.</summary>
    internal static Study? StudyOf(WorkspaceAnalysis analysis, Finding finding) =>
        analysis.Workspace.Link(finding.Place.File)?.Declarations.FirstOrDefault(declaration => declaration.Own.Syntax == finding.Place.Declaration) switch
        {
            { Kind: DeclarationKind.Rig } rig => analysis.Rig(rig),
            { Kind: DeclarationKind.Trip } trip => analysis.Trip(trip),
            _ => null,
        };
}

/// <summary>A fix with a number that was solved for.</summary>
/// <param name="Fix">Its title says what it changes and what comes of it, in numbers.</param>
/// <param name="NewErrors">Slugs of errors that weren't there before; empty for one that can be taken without a thought.</param>
/// <param name="NewWarnings">Slugs of the warnings likewise.</param>
public sealed record ComputedFix(Fix Fix, ImmutableArray<string> NewErrors, ImmutableArray<string> NewWarnings);

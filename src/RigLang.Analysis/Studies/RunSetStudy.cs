using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>The logged drives of one rig that a file shows, taken together.</summary>
public sealed class RunSetStudy : Study, ISubject
{
    /// <param name="parts">What there is.</param>
    /// <param name="rig">The rig as it is written, for its figures to be held against those of the drives.</param>
    /// <param name="runs">The drives, each with the rig as it was loaded that day.</param>
    public RunSetStudy(RunSetParts parts, RigStudy rig, ImmutableArray<RunStudy> runs)
        : this(parts, rig, runs, null, null)
    {
    }

    private RunSetStudy(RunSetParts parts, RigStudy rig, ImmutableArray<RunStudy> runs, RunSetStudy? original, Variation? variation)
        : base(original, variation)
    {
        Parts = parts;
        Rig = rig;
        Runs = runs;
    }

    public RunSetParts Parts { get; }

    public RigStudy Rig { get; }

    public ImmutableArray<RunStudy> Runs { get; }

    public string Title => $"runs of {Rig.Title}";

    Study ISubject.Study => this;

    public override IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions => Rig.Assumptions;

    /// <summary>The same drives with another value (SI) for one fact of theirs or of the rig's.</summary>
    public RunSetStudy With(Block block, FactDeclaration fact, double value) => With(Variation.Of(FactRef.Of(block, fact), value));

    public override RunSetStudy With(Variation variation) => new(Parts, Rig.With(variation), [.. Runs.Select(run => run.With(variation))], this, variation);

    public override IEnumerable<Study> Inner => [Rig, .. Runs];

    private protected override IEnumerable<ISubject> ListSubjects() => [this];
}

/// <summary>A rig's drives, looked up.</summary>
/// <param name="From">The declaration from whose file they are seen: the rig, or one of the runs.</param>
/// <param name="Rig">The rig with its parts.</param>
/// <param name="Runs">At least one; their rigs are found.</param>
public sealed record RunSetParts(Declaration From, RigParts Rig, ImmutableArray<RunParts> Runs)
{
    /// <summary>Null where no run of the rig is in sight.</summary>
    /// <param name="workspace">All files.</param>
    /// <param name="from">A rig or a run.</param>
    public static RunSetParts? Of(Workspace workspace, Declaration from)
    {
        var rig = from.Kind == DeclarationKind.Rig ? from : RunsInSight.RigOf(workspace, from);
        return rig is not null && RunsInSight.Of(workspace, from.Own.File, rig) is { IsEmpty: false } runs
            ? new RunSetParts(from, RigParts.Of(workspace, rig), [.. runs.Select(run => RunParts.Of(workspace, run))])
            : null;
    }

    /// <summary>
    /// The same, but only where what the drives say is to be reported: at the rig if its own file shows them, else at the first run of a file.
    /// </summary>
    public static RunSetParts? ToReport(Workspace workspace, Declaration from)
    {
        if (from.Kind != DeclarationKind.Run)
        {
            return Of(workspace, from);
        }

        return RunsInSight.RigOf(workspace, from) is { } rig
            && !RunsInSight.Of(workspace, rig.Own.File, rig).Contains(from)
            && RunsInSight.Of(workspace, from.Own.File, rig).FirstOrDefault(run => run.Own.File == from.Own.File) == from
            ? Of(workspace, from)
            : null;
    }

    public bool SameAs(RunSetParts other) =>
        ReferenceEquals(From, other.From) && Rig.SameAs(other.Rig) && Runs.Length == other.Runs.Length && Runs.Zip(other.Runs).All(pair => pair.First.SameAs(pair.Second));
}

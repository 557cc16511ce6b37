using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Model.Tracks;

namespace RigLang.Analysis.Studies;

/// <summary>One logged drive with the rig as it was loaded that day.</summary>
public sealed class RunStudy : Study, ISubject
{
    /// <param name="parts">What the run names, its rig found.</param>
    /// <param name="rig">The study of that rig.</param>
    public RunStudy(RunParts parts, RigStudy rig)
        : this(parts, rig, null, null)
    {
    }

    private RunStudy(RunParts parts, RigStudy rig, RunStudy? original, Variation? variation)
        : base(original, variation)
    {
        Parts = parts;
        Rig = rig;
    }

    public RunParts Parts { get; }

    public string Title => $"run {Parts.Run.Name}";

    Study ISubject.Study => this;

    public Block Block => Parts.Run.Block;

    public RigStudy Rig { get; }

    /// <summary>The track that the run names; null where it names none, or it can't be read.</summary>
    public Track? Track => Parts.Gpx?.Reading.Track;

    /// <summary>The same drive with another value (SI) for one fact, its own or the rig's.</summary>
    public RunStudy With(Block block, FactDeclaration fact, double value) => With(Variation.Of(FactRef.Of(block, fact), value));

    public override IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions => Rig.Assumptions;

    public override RunStudy With(Variation variation) => new(Parts, Rig.With(variation), this, variation);

    public override IEnumerable<Study> Inner => [Rig];

    private protected override IEnumerable<ISubject> ListSubjects() => [this];
}

/// <summary>What the run names, looked up.</summary>
public sealed record RunParts(Declaration Run, RigParts? Rig, TrackFile? Gpx)
{
    public static RunParts Of(Workspace workspace, Declaration run)
    {
        var rig = run.Block.Find(RunFacts.Rig) is { } line && RigParts.Named(workspace, line, DeclarationKind.Rig) is { } named ? RigParts.Of(workspace, named) : null;
        var loaded = rig is not null && !run.Block.All(RunFacts.Load).IsEmpty ? rig with { Loads = RigParts.LoadsNamed(workspace, run.Block, RunFacts.Load) } : rig;
        return new RunParts(run, loaded, TrackFile.Of(workspace, run.Block, RunFacts.Journey.Gpx));
    }

    public bool SameAs(RunParts other) =>
        ReferenceEquals(Run, other.Run) && Rig is { } mine && other.Rig is { } theirs && mine.SameAs(theirs)
        && ReferenceEquals(Gpx?.Line, other.Gpx?.Line) && ReferenceEquals(Gpx?.Reading, other.Gpx?.Reading);
}

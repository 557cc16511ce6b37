using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Reasons;
using RigLang.Editing.Workspaces;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Cli.Showing;

/// <summary>A declaration that has results of its own, ready to be asked for them.</summary>
public abstract record Subject(Declaration Declaration)
{
    /// <summary>Whose results there are: the subject itself, then its axles, legs, readings.</summary>
    public abstract IEnumerable<ISubject> Parts { get; }

    /// <summary>What gives them, its questions answered.</summary>
    public Study Asked => Parts.First().Study;

    /// <summary>In which units its results are shown.</summary>
    public UnitChoice Units(UnitHabit habit = UnitHabit.AsWritten) => SubjectUnits.Of(Parts.First(), habit);

    /// <summary>The kinds that have results, in the order in which they are shown.</summary>
    public static ImmutableArray<DeclarationKind> Kinds { get; } = [DeclarationKind.Rig, DeclarationKind.Trip, DeclarationKind.Weighing, DeclarationKind.Run];

    /// <summary>Null for a kind without results, and for one whose rig isn't found.</summary>
    public static Subject? Of(WorkspaceAnalysis analysis, Declaration declaration) => declaration.Kind switch
    {
        DeclarationKind.Rig => new ShownRig(declaration, analysis.Rig(declaration), analysis.RunSet(declaration)),
        DeclarationKind.Trip when analysis.Trip(declaration) is { } trip => new ShownTrip(declaration, trip),
        DeclarationKind.Weighing when analysis.Weighing(declaration) is { } weighing => new ShownWeighing(declaration, weighing),
        DeclarationKind.Run when analysis.Run(declaration) is { } run => new ShownRun(declaration, run, analysis.RunSet(declaration)),
        _ => null,
    };
}

/// <summary>A rig.</summary>
public sealed record ShownRig(Declaration Declaration, RigStudy Study, RunSetStudy? Runs) : Subject(Declaration)
{
    public override IEnumerable<ISubject> Parts => Runs is null ? [Study, .. Study.Axles] : [Study, .. Study.Axles, Runs];
}

/// <summary>A trip.</summary>
public sealed record ShownTrip(Declaration Declaration, TripStudy Study) : Subject(Declaration)
{
    public override IEnumerable<ISubject> Parts => [Study, .. Study.Legs.SelectMany(leg => leg.Stop is { } stop ? new ISubject[] { leg, stop } : [leg])];
}

/// <summary>A weighing.</summary>
public sealed record ShownWeighing(Declaration Declaration, WeighingStudy Study) : Subject(Declaration)
{
    public override IEnumerable<ISubject> Parts => [Study, .. Study.Passes.SelectMany(pass => pass.Readings)];
}

/// <summary>A logged drive.</summary>
public sealed record ShownRun(Declaration Declaration, RunStudy Study, RunSetStudy? Runs) : Subject(Declaration)
{
    public override IEnumerable<ISubject> Parts => Runs is null ? [Study] : [Study, Runs];
}

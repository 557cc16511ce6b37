using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Checks.Units;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks;

/// <summary>
/// Whether the checks of a declaration could look at everything. A check that lacks a number is silent, which doesn't mean that all is well: so what says
/// "there is nothing" waits until the lines are in order and the main figures come out.
/// </summary>
internal static class Judgeable
{
    public static bool Is(WorkspaceAnalysis analysis, Declaration declaration) =>
        Parts(analysis, declaration).All(part => !HasErrors(analysis.Workspace, part)) && MainFiguresComeOut(analysis, declaration);

    /// <summary>The declaration, what it names, and what those name.</summary>
    private static IEnumerable<Declaration> Parts(WorkspaceAnalysis analysis, Declaration declaration) => declaration.Kind switch
    {
        DeclarationKind.Rig => PartsOf(analysis.Rig(declaration).Parts),
        DeclarationKind.Trip when analysis.Trip(declaration) is { } trip => PartsOf(trip.Rig.Parts).Prepend(declaration),
        DeclarationKind.Weighing when analysis.Weighing(declaration) is { } weighing => PartsOf(weighing.Rig.Parts).Prepend(declaration),
        DeclarationKind.Run when analysis.Run(declaration) is { } run => PartsOf(run.Rig.Parts).Prepend(declaration),
        _ => [declaration],
    };

    private static IEnumerable<Declaration> PartsOf(RigParts parts) =>
        new[] { parts.Rig, parts.Vehicle, parts.Trailer, parts.Hitch, parts.Practice }.OfType<Declaration>().Concat(parts.Loads);

    /// <summary>
    /// Whether a line of the declaration, or of what the rig names, is in error or of an unlikely size. What would follow from that one slip isn't said
    /// before it is mended: that the model is off, say. What a plate or a law limits is said in any case.
    /// </summary>
    public static bool IsUnsettled(Declaration declaration, RigParts rig) => IsIncomplete(rig) || PartsOf(rig).Prepend(declaration).Any(IsUnsettled);

    /// <summary>Whether the rig names no vehicle, or something that can't be found. Which facts are wanted isn't known then: of a battery or of a tank.</summary>
    private static bool IsIncomplete(RigParts rig) =>
        rig.Vehicle is null || (rig.Trailer is null && rig.Rig.Block.Find(RigFacts.Trailer) is not null) || (rig.Hitch is null && rig.Rig.Block.Find(RigFacts.Hitch) is not null);

    /// <summary>The same of one declaration and what it is like.</summary>
    public static bool IsUnsettled(Declaration part) => IsInError(part) || Levels(part).Any(level => level.Own.Findings.Any(finding => finding.Check == MagnitudeUnlikely.Declaration));

    /// <summary>Whether a line of the declaration, or of what it is like, is in error: it may be the very one that something looks for.</summary>
    public static bool IsInError(Declaration part) => Levels(part).Any(level => level.Own.Findings.Concat(level.Findings).Any(finding => finding.Severity == Severity.Error));

    public static bool IsInError(RigParts rig) => PartsOf(rig).Any(IsInError);

    private static IEnumerable<Declaration> Levels(Declaration part)
    {
        for (var level = part; level is not null; level = level.Parent)
        {
            yield return level;
        }
    }

    /// <summary>Whether something on the line is in error, and reported.</summary>
    public static bool IsBroken(Declaration declaration, Fact line) =>
        declaration.Own.Findings.Any(finding => finding.Severity == Severity.Error && finding.Place.Line == line.Place.Line && finding.Place.Declaration == line.Place.Declaration);

    private static bool HasErrors(Workspace workspace, Declaration part) =>
        IsInError(part) || Levels(part).Any(level => workspace.Link(level.Own.File)?.Findings.Any(finding => finding.Place.Declaration == level.Own.Syntax && finding.Severity == Severity.Error) == true);

    private static bool MainFiguresComeOut(WorkspaceAnalysis analysis, Declaration declaration) => declaration.Kind switch
    {
        DeclarationKind.Rig => LoadsComeOut(analysis.Rig(declaration)),
        DeclarationKind.Trip => analysis.Trip(declaration) is { } trip && LoadsComeOut(trip.Rig) && trip.Compute(TripResults.LeastLeft, trip).IsComputed,
        DeclarationKind.Weighing => analysis.Weighing(declaration) is { } weighing && LoadsComeOut(weighing.Rig),
        DeclarationKind.Run => analysis.Run(declaration) is { } run && LoadsComeOut(run.Rig),
        _ => true,
    };

    /// <summary>The same for a study, without a look at the lines: whether the figures that its checks rest on come out.</summary>
    public static bool ComesOut(Tracking.Study study) => study switch
    {
        RigStudy rig => LoadsComeOut(rig),
        TripStudy trip => trip.Compute(TripResults.LeastLeft, trip).IsComputed,
        _ => false,
    };

    private static bool LoadsComeOut(RigStudy rig) => rig.Compute(LoadResults.TrainLoad, rig).IsComputed;
}

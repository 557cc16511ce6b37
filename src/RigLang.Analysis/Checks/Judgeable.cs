using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
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

    private static bool HasErrors(Workspace workspace, Declaration part)
    {
        for (var level = part; level is not null; level = level.Parent)
        {
            var linked = workspace.Link(level.Own.File)?.Findings.Where(finding => finding.Place.Declaration == level.Own.Syntax) ?? [];
            if (level.Own.Findings.Concat(level.Findings).Concat(linked).Any(finding => finding.Severity == Severity.Error))
            {
                return true;
            }
        }

        return false;
    }

    private static bool MainFiguresComeOut(WorkspaceAnalysis analysis, Declaration declaration) => declaration.Kind switch
    {
        DeclarationKind.Rig => LoadsComeOut(analysis.Rig(declaration)),
        DeclarationKind.Trip => analysis.Trip(declaration) is { } trip && LoadsComeOut(trip.Rig) && trip.Compute(TripResults.LeastLeft, trip).IsComputed,
        DeclarationKind.Weighing => analysis.Weighing(declaration) is { } weighing && LoadsComeOut(weighing.Rig),
        DeclarationKind.Run => analysis.Run(declaration) is { } run && LoadsComeOut(run.Rig),
        _ => true,
    };

    private static bool LoadsComeOut(RigStudy rig) => rig.Compute(LoadResults.TrainLoad, rig).IsComputed;
}

using RigLang.Analysis;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Comparing;

/// <summary>What of a declaration has results, by a key that holds from state to state: itself, its axles, legs, stops, passes, readings.</summary>
internal static class ComputedParts
{
    private const string Itself = "";
    private const string Drives = "runs";

    public static IEnumerable<(string Key, ISubject Subject)> Of(WorkspaceAnalysis analysis, Declaration declaration)
    {
        switch (declaration.Kind)
        {
            case DeclarationKind.Rig:
                var rig = analysis.Rig(declaration);
                return [(Itself, rig), .. rig.Axles.Select(Titled), .. Runs(analysis, declaration)];
            case DeclarationKind.Trip when analysis.Trip(declaration) is { } trip:
                return [(Itself, trip), .. trip.Legs.SelectMany(leg => leg.Stop is { } stop ? new[] { Titled(leg), Titled(stop) } : [Titled(leg)])];
            case DeclarationKind.Weighing when analysis.Weighing(declaration) is { } weighing:
                return [(Itself, weighing), .. weighing.Passes.SelectMany(pass => pass.Readings).Select(Titled)];
            case DeclarationKind.Run when analysis.Run(declaration) is { } run:
                return [(Itself, run), .. Runs(analysis, declaration)];
            default:
                return [];
        }
    }

    private static (string Key, ISubject Subject) Titled(ISubject subject) => (subject.Title, subject);

    private static IEnumerable<(string Key, ISubject Subject)> Runs(WorkspaceAnalysis analysis, Declaration declaration) =>
        analysis.RunSet(declaration) is { } set ? [(Drives, set)] : [];
}

using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Studies;

/// <summary>The logged drives that a file shows: its own, and those of the files that it uses.</summary>
public static class RunsInSight
{
    /// <summary>Gone through once for each state of a file; most have none.</summary>
    private static readonly ConditionalWeakTable<LinkedFile, ImmutableArray<Declaration>?[]> Known = [];

    /// <summary>Those of one rig, in the order of the files. A run names its rig in its own file, so two rigs of one name aren't mixed up.</summary>
    public static ImmutableArray<Declaration> Of(Workspace workspace, FileId file, Declaration rig) =>
        [.. All(workspace, file).Where(run => ReferenceEquals(RigOf(workspace, run), rig))];

    /// <summary>The rig that a run names; null where it isn't found.</summary>
    public static Declaration? RigOf(Workspace workspace, Declaration run) =>
        run.Block.Find(RunFacts.Rig) is { } line ? RigParts.Named(workspace, line, DeclarationKind.Rig) : null;

    private static ImmutableArray<Declaration> All(Workspace workspace, FileId file)
    {
        if (workspace.Link(file) is not { } linked)
        {
            return [];
        }

        var kept = Known.GetValue(linked, _ => new ImmutableArray<Declaration>?[1]);
        return kept[0] ??= [.. Runs(linked).Concat(linked.Used.SelectMany(used => workspace.Link(used.Id) is { } other ? Runs(other) : []))];
    }

    private static IEnumerable<Declaration> Runs(LinkedFile file) => file.Declarations.Where(declaration => declaration.Kind == DeclarationKind.Run);
}

using System.Runtime.CompilerServices;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Unused;

/// <summary>A part that no rig of its file names, while the file has rigs.</summary>
public sealed class UnusedDeclaration : WorkspaceCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL170",
        Slug = "unused-declaration",
        Severity = Severity.Note,
        Summary = "A part that no rig of its file names, while the file has rigs.",
        Why = "It may be a leftover, or a name was mistyped where it should be used.",
        Bad = RigExample.Pair + """


            load july
                on vehicle
                    item surfboard 12 kg at 1.00 m behind front-axle
            """,
        Good = RigExample.Pair,
        Fix = "Name it in a rig, move it to a file of its own, or delete it.",
    };

    /// <summary>What each file's rigs, trips and weighings name. Kept with the file, so that a long one is gone through once.</summary>
    private static readonly ConditionalWeakTable<LinkedFile, HashSet<(DeclarationKind, string)>> Named = [];

    public override IEnumerable<Finding> Run(Workspace workspace, Declaration declaration)
    {
        if (!IsPart(declaration.Kind) || workspace.Link(declaration.Own.File) is not { } linked || linked.Findings.Any(finding => finding.Check == NameTaken.Declaration)
            || linked.Declarations.Any(other => !IsPart(other.Kind) && Judgeable.IsInError(other)))
        {
            yield break; // a line in error may be the one that names it
        }

        // A file of parts alone is there for other files to use; which ones do isn't known here.
        if (IsPart(declaration.Kind) && workspace.Link(declaration.Own.File) is { } file && file.FindOwn(declaration.Kind, declaration.Name) == declaration
            && Named.GetValue(file, NamedIn) is { Count: > 0 } named && !named.Contains((declaration.Kind, declaration.Name))
            && !named.Any(line => line.Item1 == declaration.Kind && IsNowhere(workspace, file, line.Item2, declaration.Kind)))
        {
            yield return Report(declaration.Own.NamePlace, $"No rig of this file names {declaration}.");
        }
    }

    /// <summary>A misspelt name may be this one's; it is reported where it stands.</summary>
    private static bool IsNowhere(Workspace workspace, LinkedFile file, string name, DeclarationKind kind) =>
        workspace.Find(file.File.Id, kind, name) is null && BuiltInPractices.Find(kind, name) is null;

    /// <summary>Empty for a file without rigs.</summary>
    private static HashSet<(DeclarationKind, string)> NamedIn(LinkedFile file)
    {
        if (!file.Declarations.Any(declaration => declaration.Kind == DeclarationKind.Rig))
        {
            return [];
        }

        var parents = from declaration in file.Declarations
                      let parent = declaration.Own.Parent?.Text
                      where parent is not null
                      select (declaration.Kind, parent);
        var lines = from declaration in file.Declarations
                    where !IsPart(declaration.Kind)
                    from line in declaration.Block.Facts
                    where line.Declaration.Signature.Slots is [{ Form: ReferenceForm }]
                    let name = line.WordOf(Signature.ValueRole)
                    where name is not null
                    select (((ReferenceForm)line.Declaration.Signature.Slots[0].Form).Kind, name);
        return [.. parents, .. lines];
    }

    private static bool IsPart(DeclarationKind kind) =>
        kind is DeclarationKind.Vehicle or DeclarationKind.Trailer or DeclarationKind.Hitch or DeclarationKind.Load or DeclarationKind.Practice;
}

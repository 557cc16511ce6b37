using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Declarations;

/// <summary>A line names a declaration that isn't in sight.</summary>
public sealed class UnknownReference : WorkspaceCheck
{
    public override CheckDeclaration Declaration => NameUnknown.Declaration;

    public override IEnumerable<Finding> Run(Workspace workspace, Declaration declaration)
    {
        // Inherited lines are looked at where they are written.
        foreach (var line in declaration.Block.Facts.Where(line => line.Place.Declaration == declaration.Own.Syntax))
        {
            if (line.Declaration.Signature.Slots is not [{ Form: ReferenceForm { Kind: var kind } }] || line.Value is not WordValue || RigParts.Named(workspace, line, kind) is not null)
            {
                continue;
            }

            var file = workspace.Link(line.Place.File)!.File;
            if (file.Declarations.Any(own => own.Kind == kind && own.Name.Length == 0))
            {
                continue; // it may be that one, which is reported for having no name
            }

            var inSight = workspace.Link(line.Place.File)!.NamesInSight(kind);
            if (kind == DeclarationKind.Practice)
            {
                inSight = inSight.Concat(BuiltInPractices.All.Select(practice => practice.Name));
            }

            yield return NameUnknown.Report(line.PlaceOf(Signature.ValueRole), kind.Keyword(), inSight, OtherKind(file, line.WordOf(Signature.ValueRole)!));
        }
    }

    private static string? OtherKind(RigFile file, string name) =>
        DeclarationKinds.All.FirstOrDefault(kind => file.Find(kind, name) is not null) is var other && file.Find(other, name) is not null ? $" `{name}` is a {other.Keyword()}." : null;
}

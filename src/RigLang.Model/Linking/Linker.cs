using System.Collections.Immutable;
using RigLang.Model.Binding;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Linking;

/// <summary>Follows the <c>use</c> lines of a file and the <c>like</c> of its declarations.</summary>
internal sealed class Linker
{
    // Far more than is allowed, so that the declaration that is too deep is the one reported; an end, so that no file can exhaust the stack.
    private const int LongestFollowed = 100;

    private readonly Workspace workspace;
    private readonly RigFile file;
    private readonly List<Finding> findings = [];
    private readonly Dictionary<OwnDeclaration, Declaration> done = [];
    private readonly IReadOnlyDictionary<OwnDeclaration, Declaration>? before;
    private readonly Dictionary<FileId, RigFile> used = [];

    private Linker(Workspace workspace, RigFile file, LinkedFile? previous)
    {
        this.workspace = workspace;
        this.file = file;
        before = previous?.Followed;
    }

    public static LinkedFile Link(Workspace workspace, RigFile file, LinkedFile? previous)
    {
        var linker = new Linker(workspace, file, previous);
        linker.ReportOrder();
        linker.FollowUses();
        var own = file.Declarations.Where(declaration => declaration.Kind is not null).ToList();
        linker.ReportNamesTaken(own);
        var declarations = own.Select(declaration => linker.Follow(declaration, [])).ToImmutableArray();
        return new LinkedFile(file, declarations, linker.done, [.. linker.used.Values], [.. linker.findings, .. declarations.SelectMany(declaration => declaration.Findings)]);
    }

    private void ReportOrder()
    {
        for (var i = 0; i < file.Declarations.Length; i++)
        {
            if (file.Syntax.OfOrder(i) is { } late)
            {
                findings.Add(new Finding(late.Check, new Place(file.Id, file.Declarations[i].Syntax, 0, late.Span), late.Message));
            }
        }
    }

    private void FollowUses()
    {
        foreach (var (use, syntax) in file.Uses)
        {
            if (use.Path is not { } path)
            {
                continue;
            }

            var place = new Place(file.Id, syntax, 0, path.Span);
            if (FilePaths.Resolve(file.Id, path.Value) is not { } id || !workspace.IsInside(id, file.Id))
            {
                findings.Add(UsedFileOutside.Report(place, path.Value));
                continue;
            }

            var (found, problem) = workspace.Read(id);
            if (found is null)
            {
                findings.Add(UsedFileMissing.Report(place, path.Value, problem!));
            }
            else if (id != file.Id)
            {
                ReportNamesTaken(place, found);
                used[id] = found;
            }
        }
    }

    private void ReportNamesTaken(Place use, RigFile other)
    {
        foreach (var own in other.Declarations)
        {
            if (own.Kind is { } kind && used.Values.Append(file).Select(known => known.Find(kind, own.Name)).FirstOrDefault(found => found is not null) is { } first && first.File != other.Id)
            {
                findings.Add(NameTaken.Report(use, kind.Keyword(), own.Name, first.NamePlace));
            }
        }
    }

    private void ReportNamesTaken(IEnumerable<OwnDeclaration> declarations)
    {
        foreach (var own in declarations)
        {
            var kind = own.Kind!.Value;
            if (file.Find(kind, own.Name) is { } first && !ReferenceEquals(first, own))
            {
                findings.Add(NameTaken.Report(own.NamePlace, kind.Keyword(), own.Name, first.NamePlace));
            }
        }
    }

    /// <summary>A chain may lead through other files; each link is looked up in the file where its line stands.</summary>
    private Declaration Follow(OwnDeclaration own, ImmutableList<OwnDeclaration> chain)
    {
        if (done.TryGetValue(own, out var known))
        {
            return known;
        }

        var found = new List<Finding>();
        var parent = own.Parent is { } name ? FindParent(own, name, chain, found) : null;
        if (done.TryGetValue(own, out var closed))
        {
            // The chain came round to this declaration and was cut there.
            return closed;
        }

        var previous = before?.GetValueOrDefault(own);
        var isUnchanged = previous is not null && found.Count == 0 && previous.Findings.IsEmpty && ReferenceEquals(previous.Parent, parent);
        var declaration = isUnchanged ? previous! : Merge(own, parent, found);
        done[own] = declaration;
        return declaration;
    }

    private static Declaration Merge(OwnDeclaration own, Declaration? parent, List<Finding> found)
    {
        if (parent is not null)
        {
            return new Declaration(own, parent, Merging.Over(parent.Block, own.Root!, own.Path, found), [.. found]);
        }

        if (own.Parent is null)
        {
            Merging.ReportWithouts(own.Root!, found);
        }

        return new Declaration(own, null, own.OwnLines, [.. found]);
    }

    private Declaration? FindParent(OwnDeclaration own, Token name, ImmutableList<OwnDeclaration> chain, List<Finding> found)
    {
        var place = new Place(own.File, own.Syntax, 0, name.Span);
        if (chain.Contains(own) || name.Text == own.Name)
        {
            found.Add(LikeInCircle.Report(place, own.Name));
            return null;
        }

        var kind = own.Kind!.Value;
        var candidate = FindOwn(own.File, kind, name.Text);
        if (candidate is null)
        {
            var names = own.File == file.Id ? NamesInSight(kind) : [];
            found.Add(NameUnknown.Report(place, kind.Keyword(), names.Where(known => known != own.Name)));
            return null;
        }

        var parent = chain.Count > LongestFollowed ? null : Follow(candidate, chain.Add(own));
        if (parent is not null && parent.Depth < LikeTooDeep.Deepest)
        {
            return parent;
        }

        found.Add(LikeTooDeep.Report(place));
        return null;
    }

    private OwnDeclaration? FindOwn(FileId from, DeclarationKind kind, string name)
    {
        var here = from == file.Id ? file : workspace.Find(from);
        if (here is null)
        {
            return null;
        }

        var others = from == file.Id ? used.Values : here.Uses.Select(use => UsedFrom(from, use.Use)).OfType<RigFile>();
        return others.Prepend(here).Select(known => known.Find(kind, name)).FirstOrDefault(found => found is not null);
    }

    private RigFile? UsedFrom(FileId from, UseSyntax use) =>
        use.Path is { } path && FilePaths.Resolve(from, path.Value) is { } id && workspace.IsInside(id, from) ? workspace.Find(id) : null;

    private IEnumerable<string> NamesInSight(DeclarationKind kind) =>
        used.Values.Append(file).SelectMany(known => known.Declarations).Where(own => own.Kind == kind && own.Name.Length > 0).Select(own => own.Name);
}

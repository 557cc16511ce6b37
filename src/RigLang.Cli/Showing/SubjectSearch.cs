using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Cli.Checking;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;

namespace RigLang.Cli.Showing;

/// <summary>What was found for a query; where that is nothing, lines that say why and what could be asked instead.</summary>
public sealed record SubjectSearch(ImmutableArray<Subject> Subjects, ImmutableArray<string> Trouble)
{
    private const int MostListed = 12;

    public static SubjectSearch Find(SubjectQuery query, WorkspaceAnalysis analysis, IEnumerable<FileId> files, Func<FileId, string> shown, string command = "show")
    {
        var all = files.SelectMany(file => analysis.Workspace.Link(file)?.Declarations ?? []).ToList();
        var showable = all.Where(declaration => Subject.Kinds.Contains(declaration.Kind)).OrderBy(declaration => Subject.Kinds.IndexOf(declaration.Kind)).ToList();
        var matching = showable.Where(declaration => (query.Name is null || declaration.Name == query.Name) && (query.Kind is null || declaration.Kind == query.Kind)).ToList();
        if (matching.Count == 0)
        {
            return new SubjectSearch([], [.. NothingFound(query, all, showable)]);
        }

        if (query.Name is { } name && matching.Count > 1)
        {
            var way = $"Say which by its kind (`riglang {command} {matching[0].Kind.Keyword()} {name}`) or its file (`--in PATH`):";
            return new SubjectSearch([], [$"Several things are called `{name}`. {way}", .. Listed(matching, analysis.Workspace, shown)]);
        }

        var subjects = matching.Select(declaration => Subject.Of(analysis, declaration)).OfType<Subject>().ToImmutableArray();
        return subjects.IsEmpty
            ? new SubjectSearch([], [$"{matching[0]} names a rig that isn't found, so there is nothing to show. `riglang check {shown(matching[0].Own.File)}` says more."])
            : new SubjectSearch(subjects, []);
    }

    private static IEnumerable<string> NothingFound(SubjectQuery query, List<Declaration> all, List<Declaration> showable)
    {
        var where = query.Paths.IsEmpty ? "here or below" : $"in {query.Paths[0]}";
        if (query.Name is not { } name)
        {
            yield return $"There is no {query.Kind?.Keyword() ?? Words} {where}.";
            yield break;
        }

        if (all.FirstOrDefault(declaration => declaration.Name == name && (query.Kind is null || declaration.Kind == query.Kind)) is { } part)
        {
            yield return $"{part} has no results by itself; a rig that names it has.";
        }
        else
        {
            var near = Spelling.Nearest(name, showable.Select(declaration => declaration.Name));
            yield return $"No {query.Kind?.Keyword() ?? Words} is called `{name}` {where}.{(near is null ? "" : $" Did you mean `{near}`?")}";
        }

        if (query.Kind is { } kind && showable.Exists(declaration => declaration.Kind == kind))
        {
            showable = showable.FindAll(declaration => declaration.Kind == kind);
        }

        if (showable.Count > 0)
        {
            var more = showable.Count > MostListed ? ", …" : "";
            yield return $"There {(showable.Count == 1 ? "is" : "are")}: {string.Join(", ", showable.Take(MostListed))}{more}.";
        }
    }

    private static string Words => string.Join(", ", Subject.Kinds.SkipLast(1).Select(kind => kind.Keyword())) + " or " + Subject.Kinds[^1].Keyword();

    private static IEnumerable<string> Listed(IEnumerable<Declaration> declarations, Workspace workspace, Func<FileId, string> shown) =>
        declarations.Select(declaration => $"  {FindingPrinter.PlaceWords(workspace, shown, declaration.Own.NamePlace)}: {declaration}");
}

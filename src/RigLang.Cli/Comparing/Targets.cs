using System.Collections.Immutable;
using RigLang.Cli.Files;
using RigLang.Cli.Revisions;
using RigLang.Comparing;
using RigLang.Model.Files;

namespace RigLang.Cli.Comparing;

/// <summary>The two states that a command line asks about, and what each is called. Holds the process that reads revisions.</summary>
internal sealed class Targets : IDisposable
{
    /// <summary>What is compared when nothing is said: what was last committed with what lies there now.</summary>
    private const string LastCommit = "HEAD";
    private const string WorkTree = "the files as they are";

    private BlobReader? blobs;

    private Targets()
    {
    }

    public ComparedState Before { get; private set; } = null!;

    public ComparedState After { get; private set; } = null!;

    public string TitleBefore { get; private set; } = "";

    public string TitleAfter { get; private set; } = "";

    /// <summary>Why one of the states isn't there, one line each; the states are null then.</summary>
    public ImmutableArray<string> Problems { get; private set; } = [];

    /// <param name="words">None: HEAD and the work tree. One: a revision and the work tree, or a path as of HEAD and as it is. Two: paths or revisions.</param>
    /// <param name="within">A file or folder to keep to, of revisions.</param>
    /// <param name="folder">The current folder.</param>
    public static Targets Find(IReadOnlyList<string> words, string? within, string folder)
    {
        var targets = new Targets();
        var given = words.Count == 1 && !IsPath(words[0], folder) && words[0].Split("..", 2) is [{ Length: > 0 } from, { Length: > 0 } to] ? [from, to] : words;
        var paths = given.Select(word => IsPath(word, folder)).ToList();
        targets.Problems = (given.Count, paths) switch
        {
            (2, [true, true]) => targets.OfPaths(given[0], given[1], within, folder),
            (2, [false, false]) => targets.OfRevisions(given[0], given[1], within ?? ".", folder),
            (2, _) => [$"`{given[paths.IndexOf(true)]}` is a path and `{given[paths.IndexOf(false)]}` is none: name two paths, or two revisions (`--in PATH` keeps to a path of them)."],
            (1, [true]) when within is not null => ["Name the path once: as `--in PATH`, or by itself."],
            (1, [true]) => targets.OfRevisions(LastCommit, null, given[0], folder),
            (1, _) => targets.OfRevisions(given[0], null, within ?? ".", folder),
            _ => targets.OfRevisions(LastCommit, null, within ?? ".", folder),
        };
        return targets;
    }

    public void Dispose() => blobs?.Dispose();

    private static bool IsPath(string word, string folder) =>
        word.Length > 0 && !word.Contains('\0', StringComparison.Ordinal) && (Path.Exists(DiskPaths.Absolute(word, folder)) || word.EndsWith(".rig", StringComparison.Ordinal));

    private ImmutableArray<string> OfPaths(string before, string after, string? within, string folder)
    {
        if (within is not null)
        {
            return ["`--in` keeps to a path of revisions; two paths are compared as they are."];
        }

        var problems = ImmutableArray.CreateBuilder<string>();
        var (from, to) = (Inputs(before, folder, problems), Inputs(after, folder, problems));
        if (from is null || to is null)
        {
            return problems.ToImmutable();
        }

        var (isFolderBefore, isFolderAfter) = (Directory.Exists(DiskPaths.Absolute(before, folder)), Directory.Exists(DiskPaths.Absolute(after, folder)));
        if (isFolderBefore != isFolderAfter)
        {
            return ["One of them is a folder and the other a file: name two of a kind."];
        }

        Before = OnDisk(from, isFolderBefore ? DiskPaths.Absolute(before, folder) : null);
        After = OnDisk(to, isFolderAfter ? DiskPaths.Absolute(after, folder) : null);
        (TitleBefore, TitleAfter) = (before, after);
        return [];
    }

    /// <summary>Two folders meet by the paths in them; two single files meet whatever they are called.</summary>
    private static ComparedState OnDisk(RigInputs inputs, string? named)
    {
        var home = named ?? inputs.Files[0].Folder;
        return new ComparedState(new DiskFileSource(), inputs.Roots[0], inputs.Files, file =>
            named is null && file == inputs.Files[0] ? "the file"
            : FilePaths.IsUnder(file, [home]) ? FilePaths.Relative(file, home)
            : null);
    }

    private static RigInputs? Inputs(string path, string folder, ImmutableArray<string>.Builder problems)
    {
        var inputs = RigInputs.Find([path], new DiskFileSource(), folder);
        problems.AddRange(inputs.Problems.Select(problem => $"{problem.Path}: {problem.Words}"));
        return inputs.Problems.IsEmpty ? inputs : null;
    }

    /// <param name="after">Null for the work tree.</param>
    private ImmutableArray<string> OfRevisions(string before, string? after, string path, string folder)
    {
        var place = DiskPaths.Absolute(path, folder);
        var (repository, problem) = Repository.Of(ExistingFolder(place));
        if (repository is null)
        {
            return [$"{path}: {problem}."];
        }

        var problems = ImmutableArray.CreateBuilder<string>();
        blobs = new BlobReader(repository.Root);
        var old = Revision(repository, before, problems);
        var now = after is null ? null : Revision(repository, after, problems);
        if (problems.Count > 0)
        {
            return problems.ToImmutable();
        }

        var root = repository.Root;
        Before = Stored(new RevisionFiles(repository, old!.Id, blobs), root, place);
        After = Stored(now is null ? new DiskFileSource() : new RevisionFiles(repository, now.Id, blobs), root, place);
        (TitleBefore, TitleAfter) = (old.Title, now?.Title ?? WorkTree);
        return Before.Asked.IsEmpty && After.Asked.IsEmpty ? [$"{path}: no .rig file there, neither in {TitleBefore} nor in {TitleAfter}."] : [];
    }

    private static ComparedState Stored(IFileSource source, string root, string place)
    {
        var file = new FileId(place);
        return new ComparedState(source, root, place.EndsWith(".rig", StringComparison.Ordinal) ? source.Read(file).Text is null ? [] : [file] : source.RigFilesUnder(place));
    }

    private static Revision? Revision(Repository repository, string word, ImmutableArray<string>.Builder problems)
    {
        var (revision, problem) = repository.Find(word);
        if (revision is null)
        {
            problems.Add($"{word}: {problem}.");
        }

        return revision;
    }

    /// <summary>A path may be gone by now; the folder that held it may not.</summary>
    private static string ExistingFolder(string place)
    {
        var folder = place;
        while (!Directory.Exists(folder) && Path.GetDirectoryName(folder) is { Length: > 0 } above)
        {
            folder = above;
        }

        return folder;
    }
}

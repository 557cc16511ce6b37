using RigLang.Cli.Files;

namespace RigLang.Cli.Revisions;

/// <summary>A repository on the disk, to be read.</summary>
/// <param name="Root">The top folder of its work tree; absolute, forward slashes.</param>
internal sealed record Repository(string Root)
{
    /// <summary>The repository that holds a folder, or half a sentence on why there is none.</summary>
    public static (Repository? Repository, string? Problem) Of(string folder)
    {
        if (GitProgram.Ask(folder, "rev-parse", "--show-toplevel") is not { } answer)
        {
            return (null, "the git program isn't found, and without it no revision can be read");
        }

        if (answer.IsGood && answer.Line.Length > 0)
        {
            return (new Repository(DiskPaths.Absolute(answer.Line, folder)), null);
        }

        return (null, answer.Trouble.Contains("dubious ownership", StringComparison.Ordinal)
            ? "the repository belongs to another user; git reads it once `git config --global --add safe.directory` names it"
            : "the folder is in no git work tree, so it has no revisions");
    }

    /// <summary>The commit that a word names, or half a sentence on why there is none.</summary>
    public (Revision? Revision, string? Problem) Find(string word)
    {
        var answer = GitProgram.Ask(Root, "log", "-1", "--no-show-signature", "--format=%H%n%h%n%cs%n%s", "--end-of-options", word, "--");
        if (answer is { IsGood: true } && answer.Text.Split('\n') is [var id, var brief, var day, var subject, ..])
        {
            return (new Revision(word, id, brief, day, subject), null);
        }

        var isEmpty = GitProgram.Ask(Root, "rev-parse", "--verify", "--quiet", "HEAD^{commit}") is not { IsGood: true };
        return (null, isEmpty ? "there is no commit yet"
            : IsShallow ? $"no such revision here; the clone is shallow, and `git fetch --unshallow` brings the rest"
            : "no such revision, and no such file or folder");
    }

    private bool IsShallow => GitProgram.Ask(Root, "rev-parse", "--is-shallow-repository")?.Line == "true";
}

/// <summary>A commit.</summary>
/// <param name="Word">As it was asked for.</param>
/// <param name="Id">In full.</param>
/// <param name="Brief">As git shortens it.</param>
/// <param name="Day">When it was committed, 2026-11-25.</param>
/// <param name="Subject">The first line of its message.</param>
internal sealed record Revision(string Word, string Id, string Brief, string Day, string Subject)
{
    /// <summary>"HEAD~1 (3f2a1c9, 2026-11-25)".</summary>
    public string Title => Word.StartsWith(Brief, StringComparison.Ordinal) || Id == Word ? $"{Brief} ({Day})" : $"{Word} ({Brief}, {Day})";
}

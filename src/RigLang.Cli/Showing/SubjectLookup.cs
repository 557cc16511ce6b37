using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Cli.Files;
using RigLang.Cli.Terminals;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Showing;

/// <summary>What a command line asks about, found on the disk.</summary>
internal sealed record SubjectLookup(WorkspaceAnalysis Analysis, ImmutableArray<Subject> Subjects, Func<FileId, string> Shown)
{
    public Workspace Workspace => Analysis.Workspace;

    /// <summary>Null when there is nothing; why is printed then.</summary>
    /// <param name="command">Which command asks, for what it suggests to type.</param>
    public static SubjectLookup? Find(Terminal terminal, SubjectQuery query, string command = "show")
    {
        var source = new DiskFileSource();
        string Shown(FileId file) => DiskPaths.Shown(file, terminal.Folder);
        var inputs = RigInputs.Find(query.Paths, source, terminal.Folder);
        foreach (var problem in inputs.Problems)
        {
            terminal.Error.Wrapped(2, new Piece(problem.Path, Ink.Place), ": ", problem.Words);
        }

        if (!inputs.Problems.IsEmpty)
        {
            return null;
        }

        var analysis = new WorkspaceAnalysis(inputs.OpenWorkspace(source)).Solved;
        var search = SubjectSearch.Find(query, analysis, inputs.Files, Shown, command);
        foreach (var line in search.Trouble)
        {
            terminal.Error.Wrapped(2, line);
        }

        return search.Subjects.IsEmpty ? null : new SubjectLookup(analysis, search.Subjects, Shown);
    }
}

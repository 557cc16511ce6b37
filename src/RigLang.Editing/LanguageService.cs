using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Editing.Colouring;
using RigLang.Editing.Completing;
using RigLang.Editing.Fixing;
using RigLang.Editing.Formatting;
using RigLang.Editing.Hovering;
using RigLang.Editing.Lenses;
using RigLang.Editing.Locating;
using RigLang.Editing.Navigating;
using RigLang.Editing.Noting;
using RigLang.Editing.Outlining;
using RigLang.Editing.Reporting;
using RigLang.Editing.Signing;
using RigLang.Editing.Workspaces;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing;

/// <summary>What an editor asks of one state of the files. Each question is answered in a folder of its own; here they are only handed on.</summary>
public sealed class LanguageService : ILanguageService
{
    private readonly EditorState state;

    internal LanguageService(EditorState state)
    {
        this.state = state;
    }

    /// <summary>What all answers are made from.</summary>
    public WorkspaceAnalysis Analysis => state.Analysis;

    public ImmutableArray<EditorFinding> Findings(FileId file, CancellationToken cancel) => FindingReport.Of(state, file, cancel);

    public ImmutableArray<EditorFinding> FindingsAtOnce(FileId file, CancellationToken cancel) => FindingReport.AtOnce(state, file, cancel);

    public bool HasOpenQuestions(FileId file) => state.IsWatched(file) && state.AsWritten.HasOpenQuestions(file);

    public HoverCard? Hover(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? HoverBuilder.At(spot, cancel) : null;

    public ImmutableArray<CompletionEntry> Complete(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? CompletionBuilder.At(spot, cancel) : [];

    public ImmutableArray<FilePlace> Definition(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? Navigator.Definition(spot) : [];

    public ImmutableArray<FilePlace> References(FileId file, LinePosition position, bool withDeclaration, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? Navigator.References(spot, withDeclaration, cancel) : [];

    public ImmutableArray<FilePlace> TypeDefinition(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? Navigator.TypeDefinition(spot) : [];

    public ImmutableArray<NameHighlight> Highlights(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? Navigator.Highlights(spot, cancel) : [];

    public RenameTarget? RenameTarget(FileId file, LinePosition position, CancellationToken cancel) => Spot.At(state, file, position) is { } spot ? Renamer.At(spot) : null;

    public RenameAnswer Rename(FileId file, LinePosition position, string newName, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? Renamer.Rename(spot, newName, cancel) : RenameAnswer.Refused("No name stands here. Only names can be renamed");

    public ImmutableArray<LineRange> LinkedPlaces(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? Navigator.Linked(spot, cancel) : [];

    public ImmutableArray<LineRange> SelectionRanges(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? SelectionWidener.At(spot) : [];

    public ImmutableArray<FileLink> Links(FileId file, CancellationToken cancel) => state.Workspace.Link(file) is { } linked ? PathLinks.Of(state, linked) : [];

    public ImmutableArray<(FilePlace Place, string NewText)> PathsAfterMove(ImmutableArray<(FileId Old, FileId New)> moves, CancellationToken cancel) =>
        PathMover.Edits(state, moves, cancel);

    public ImmutableArray<NamedPlace> NamesLike(string query, CancellationToken cancel) => NameSearch.Find(state, query, cancel);

    public ImmutableArray<OutlineEntry> Outline(FileId file, CancellationToken cancel) => state.Workspace.Find(file) is { } found ? OutlineBuilder.Of(found) : [];

    public ImmutableArray<FoldStretch> Folds(FileId file, CancellationToken cancel) => state.Workspace.Find(file) is { } found ? Stretches.Folds(found) : [];

    public ImmutableArray<InlayNote> InlayNotes(FileId file, LineRange range, CancellationToken cancel) =>
        state.Workspace.Link(file) is { } linked ? NoteBuilder.Of(new View(state, file), linked, range, cancel) : [];

    public ImmutableArray<MeaningToken> MeaningTokens(FileId file, LineRange? range, CancellationToken cancel) =>
        state.Workspace.Link(file) is { } linked ? TokenBuilder.Of(linked, range, cancel) : [];

    public SignatureCard? Signature(FileId file, LinePosition position, CancellationToken cancel) =>
        Spot.At(state, file, position) is { } spot ? SignatureBuilder.At(spot) : null;

    public ImmutableArray<LineLens> Lenses(FileId file, CancellationToken cancel) =>
        state.Workspace.Link(file) is { } linked ? LensBuilder.Of(linked, new View(state, file)) : [];

    public string LensWords(FileId file, string subject, CancellationToken cancel) =>
        state.Workspace.Link(file) is { } linked ? LensBuilder.Words(linked, new View(state, file), subject) : "";

    public string? Report(FileId file, string? subject, CancellationToken cancel) =>
        state.Workspace.Link(file) is { } linked ? ReportBuilder.Of(new View(state, file), linked, subject, cancel) : null;

    public ImmutableArray<FileId> Files(CancellationToken cancel) => [.. state.AllFiles];

    public ImmutableArray<TextReplacement> Format(FileId file, LineRange? range, CancellationToken cancel) =>
        state.Workspace.Find(file) is { } found ? FormatEdits.Of(found, range) : [];

    public ImmutableArray<OfferedChange> Changes(FileId file, LineRange range, CancellationToken cancel) => ChangeBuilder.Of(state, file, range, cancel);
}

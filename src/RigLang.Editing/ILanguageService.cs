using System.Collections.Immutable;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing;

/// <summary>
/// Everything an editor asks about one immutable state of the workspace. Safe to call from several threads at once; long answers
/// watch the token. A file that isn't known, or a position outside it, gives an empty answer.
/// </summary>
public interface ILanguageService
{
    ImmutableArray<EditorFinding> Findings(FileId file, CancellationToken cancel);

    /// <summary>The findings that are there without solving anything; the same as <see cref="Findings"/> unless <see cref="HasOpenQuestions"/>.</summary>
    ImmutableArray<EditorFinding> FindingsAtOnce(FileId file, CancellationToken cancel) => Findings(file, cancel);

    /// <summary>Whether something that the file declares asks for values which haven't been found yet in this state.</summary>
    bool HasOpenQuestions(FileId file) => false;

    HoverCard? Hover(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<CompletionEntry> Complete(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<FilePlace> Definition(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<FilePlace> References(FileId file, LinePosition position, bool withDeclaration, CancellationToken cancel);

    /// <summary>What the name is made after: the declaration that its own is like, or that it belongs to.</summary>
    ImmutableArray<FilePlace> TypeDefinition(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<NameHighlight> Highlights(FileId file, LinePosition position, CancellationToken cancel);

    /// <summary>Null where no name stands.</summary>
    RenameTarget? RenameTarget(FileId file, LinePosition position, CancellationToken cancel);

    RenameAnswer Rename(FileId file, LinePosition position, string newName, CancellationToken cancel);

    /// <summary>Places whose text stays the same while one of them is typed over; empty where that could break another file.</summary>
    ImmutableArray<LineRange> LinkedPlaces(FileId file, LinePosition position, CancellationToken cancel);

    /// <summary>The stretches around a place, the narrowest first, each inside the next.</summary>
    ImmutableArray<LineRange> SelectionRanges(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<FileLink> Links(FileId file, CancellationToken cancel);

    /// <summary>The paths to write anew when files or folders get another place; to be applied before they move.</summary>
    ImmutableArray<(FilePlace Place, string NewText)> PathsAfterMove(ImmutableArray<(FileId Old, FileId New)> moves, CancellationToken cancel);

    /// <summary>Names made anywhere in the workspace that hold the letters of the query in their order; all of them for an empty one.</summary>
    ImmutableArray<NamedPlace> NamesLike(string query, CancellationToken cancel);

    ImmutableArray<OutlineEntry> Outline(FileId file, CancellationToken cancel);

    ImmutableArray<FoldStretch> Folds(FileId file, CancellationToken cancel);

    ImmutableArray<InlayNote> InlayNotes(FileId file, LineRange range, CancellationToken cancel);

    /// <summary>Those of the whole file, or of the lines that the range touches.</summary>
    ImmutableArray<MeaningToken> MeaningTokens(FileId file, LineRange? range, CancellationToken cancel);

    /// <summary>What the line being written takes; null where nothing is written that takes anything.</summary>
    SignatureCard? Signature(FileId file, LinePosition position, CancellationToken cancel);

    /// <summary>What is shown above declarations; the words by <see cref="LensWords"/>.</summary>
    ImmutableArray<LineLens> Lenses(FileId file, CancellationToken cancel);

    /// <summary>The verdict on a rig or trip of the file in a line; empty when it isn't there.</summary>
    string LensWords(FileId file, string subject, CancellationToken cancel);

    /// <summary>All that is known of a declaration (<c>rig coast</c>), or with null of the whole file, as Markdown; null when it isn't there.</summary>
    string? Report(FileId file, string? subject, CancellationToken cancel);

    /// <summary>Every file that findings are shown of: those open and those of the folders.</summary>
    ImmutableArray<FileId> Files(CancellationToken cancel);

    ImmutableArray<TextReplacement> Format(FileId file, LineRange? range, CancellationToken cancel);

    /// <summary>What cures or accepts the findings that touch the range, and other changes offered there.</summary>
    ImmutableArray<OfferedChange> Changes(FileId file, LineRange range, CancellationToken cancel);
}

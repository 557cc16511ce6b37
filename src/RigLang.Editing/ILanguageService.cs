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

    HoverCard? Hover(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<CompletionEntry> Complete(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<FilePlace> Definition(FileId file, LinePosition position, CancellationToken cancel);

    ImmutableArray<FilePlace> References(FileId file, LinePosition position, bool withDeclaration, CancellationToken cancel);

    ImmutableArray<OutlineEntry> Outline(FileId file, CancellationToken cancel);

    ImmutableArray<FoldStretch> Folds(FileId file, CancellationToken cancel);

    ImmutableArray<InlayNote> InlayNotes(FileId file, LineRange range, CancellationToken cancel);

    ImmutableArray<MeaningToken> MeaningTokens(FileId file, CancellationToken cancel);

    ImmutableArray<TextReplacement> Format(FileId file, LineRange? range, CancellationToken cancel);

    /// <summary>The fixes of the findings that touch the range, and other changes offered there.</summary>
    ImmutableArray<EditorFix> Fixes(FileId file, LineRange range, CancellationToken cancel);
}

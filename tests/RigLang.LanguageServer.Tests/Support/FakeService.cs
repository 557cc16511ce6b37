using System.Collections.Immutable;
using RigLang.Editing;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Tests.Support;

/// <summary>One state of the fake workspace. Files it doesn't know have empty answers, as the real one promises.</summary>
internal sealed class FakeService(ImmutableDictionary<FileId, string> texts, FakeAnswers answers) : ILanguageService
{
    public ImmutableArray<EditorFinding> Findings(FileId file, CancellationToken cancel) =>
        texts.TryGetValue(file, out var text) ? answers.Findings(file, text, cancel) : [];

    public ImmutableArray<EditorFinding> FindingsAtOnce(FileId file, CancellationToken cancel) =>
        HasOpenQuestions(file) ? answers.AtOnce!(texts[file]) : Findings(file, cancel);

    public bool HasOpenQuestions(FileId file) => answers.AtOnce is not null && texts.TryGetValue(file, out var text) && text.Contains('?', StringComparison.Ordinal);

    public HoverCard? Hover(FileId file, LinePosition position, CancellationToken cancel) =>
        texts.TryGetValue(file, out var text) ? answers.Hover(text, position, cancel) : null;

    public ImmutableArray<CompletionEntry> Complete(FileId file, LinePosition position, CancellationToken cancel) => Known(file, answers.Completions);

    public ImmutableArray<FilePlace> Definition(FileId file, LinePosition position, CancellationToken cancel) => Known(file, answers.Places);

    public ImmutableArray<FilePlace> References(FileId file, LinePosition position, bool withDeclaration, CancellationToken cancel) =>
        Known(file, withDeclaration ? answers.Places : [.. answers.Places.Skip(1)]);

    public ImmutableArray<FilePlace> TypeDefinition(FileId file, LinePosition position, CancellationToken cancel) => Known(file, [.. answers.Places.Take(1)]);

    public ImmutableArray<NameHighlight> Highlights(FileId file, LinePosition position, CancellationToken cancel) => Known(file, answers.Highlights);

    public RenameTarget? RenameTarget(FileId file, LinePosition position, CancellationToken cancel) => texts.ContainsKey(file) ? answers.RenameTarget : null;

    public RenameAnswer Rename(FileId file, LinePosition position, string newName, CancellationToken cancel) => answers.Rename(newName);

    public ImmutableArray<LineRange> LinkedPlaces(FileId file, LinePosition position, CancellationToken cancel) => Known(file, answers.Ranges);

    public ImmutableArray<LineRange> SelectionRanges(FileId file, LinePosition position, CancellationToken cancel) => position.Line > 90 ? [] : Known(file, answers.Ranges);

    public ImmutableArray<FileLink> Links(FileId file, CancellationToken cancel) => Known(file, answers.Links);

    public ImmutableArray<(FilePlace Place, string NewText)> PathsAfterMove(ImmutableArray<(FileId Old, FileId New)> moves, CancellationToken cancel) =>
        [.. moves.SelectMany(move => answers.Places.Select(place => (place, move.New.Name)))];

    public ImmutableArray<NamedPlace> NamesLike(string query, CancellationToken cancel) => [.. answers.Names.Where(name => name.Name.Contains(query, StringComparison.Ordinal))];

    public ImmutableArray<OutlineEntry> Outline(FileId file, CancellationToken cancel) =>
        texts.TryGetValue(file, out var text) ? answers.Outline(text, cancel) : [];

    public ImmutableArray<FoldStretch> Folds(FileId file, CancellationToken cancel) => Known(file, answers.Folds);

    public ImmutableArray<InlayNote> InlayNotes(FileId file, LineRange range, CancellationToken cancel) =>
        Known(file, [.. answers.Notes.Where(n => n.Position >= range.Start && n.Position <= range.End)]);

    public ImmutableArray<MeaningToken> MeaningTokens(FileId file, LineRange? range, CancellationToken cancel) =>
        Known(file, range is { } stretch ? [.. answers.Tokens.Where(token => token.Line >= stretch.Start.Line && token.Line <= stretch.End.Line)] : answers.Tokens);

    public ImmutableArray<TextReplacement> Format(FileId file, LineRange? range, CancellationToken cancel) =>
        Known(file, range is { } stretch ? [.. answers.Format.Where(e => e.Range.Start >= stretch.Start && e.Range.End <= stretch.End)] : answers.Format);

    public ImmutableArray<OfferedChange> Changes(FileId file, LineRange range, CancellationToken cancel) => Known(file, answers.Changes);

    public ImmutableArray<LineLens> Lenses(FileId file, CancellationToken cancel) => Known(file, answers.Lenses);

    public string LensWords(FileId file, string subject, CancellationToken cancel) => texts.TryGetValue(file, out var text) ? $"{subject} in {text.Length} characters" : "";

    public string? Report(FileId file, string? subject, CancellationToken cancel) =>
        texts.TryGetValue(file, out var text) && (subject is null || text.Contains(subject, StringComparison.Ordinal)) ? $"# {subject ?? file.Name}\n{text}" : null;

    public ImmutableArray<FileId> Files(CancellationToken cancel) => [.. texts.Keys.OrderBy(file => file.Path, StringComparer.Ordinal)];

    public SignatureCard? Signature(FileId file, LinePosition position, CancellationToken cancel) => texts.ContainsKey(file) ? answers.Signature : null;

    private ImmutableArray<T> Known<T>(FileId file, ImmutableArray<T> answer) => texts.ContainsKey(file) ? answer : [];
}

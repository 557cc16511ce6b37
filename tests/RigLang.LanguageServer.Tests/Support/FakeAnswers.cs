using System.Collections.Immutable;
using RigLang.Editing;
using RigLang.Model.Files;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.LanguageServer.Tests.Support;

/// <summary>What the fake service answers; a test sets what it is about.</summary>
internal sealed class FakeAnswers
{
    internal static CheckDeclaration Bad { get; } = Check("RL301", "bad-line", Severity.Warning);

    public Func<FileId, string, CancellationToken, ImmutableArray<EditorFinding>> Findings { get; set; } = BadLines;

    /// <summary>What is said before questions are answered; null where nothing asks.</summary>
    public Func<string, ImmutableArray<EditorFinding>>? AtOnce { get; set; }

    public Func<string, LinePosition, CancellationToken, HoverCard?> Hover { get; set; } = (_, _, _) => null;

    public ImmutableArray<CompletionEntry> Completions { get; set; } = [];

    public ImmutableArray<FilePlace> Places { get; set; } = [];

    public ImmutableArray<NameHighlight> Highlights { get; set; } = [];

    public RenameTarget? RenameTarget { get; set; }

    public Func<string, RenameAnswer> Rename { get; set; } = _ => RenameAnswer.Refused("no name");

    public ImmutableArray<LineRange> Ranges { get; set; } = [];

    public ImmutableArray<FileLink> Links { get; set; } = [];

    public ImmutableArray<NamedPlace> Names { get; set; } = [];

    public Func<string, CancellationToken, ImmutableArray<OutlineEntry>> Outline { get; set; } = (_, _) => [];

    public ImmutableArray<FoldStretch> Folds { get; set; } = [];

    public ImmutableArray<InlayNote> Notes { get; set; } = [];

    public ImmutableArray<MeaningToken> Tokens { get; set; } = [];

    public ImmutableArray<TextReplacement> Format { get; set; } = [];

    public ImmutableArray<OfferedChange> Changes { get; set; } = [];

    public SignatureCard? Signature { get; set; }

    public ImmutableArray<LineLens> Lenses { get; set; } = [];

    internal static CheckDeclaration Check(string code, string slug, Severity severity) => new()
    {
        Code = code, Slug = slug, Severity = severity, Summary = "A summary.", Why = "A reason.", Bad = "bad", Good = "good", Fix = "Mend it.",
    };

    internal static LineRange At(int line, int from, int to) => new(new LinePosition(line, from), new LinePosition(line, to));

    internal static EditorFinding Finding(LineRange range, string message = "this is bad", CheckDeclaration? check = null) =>
        new(range, check ?? Bad, (check ?? Bad).Severity, message, [], []);

    internal static ImmutableArray<EditorFinding> BadLines(FileId file, string text, CancellationToken cancel) =>
        [.. text.Split('\n').Index().Where(l => l.Item.Contains("bad", StringComparison.Ordinal)).Select(l => Finding(At(l.Index, 0, l.Item.Length)))];
}

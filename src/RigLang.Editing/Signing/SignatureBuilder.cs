using System.Collections.Immutable;
using RigLang.Editing.Completing;
using RigLang.Editing.Locating;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Signing;

/// <summary>What may stand on the line that is being written, part by part, by what stands before the caret.</summary>
internal static class SignatureBuilder
{
    private static readonly ImmutableArray<(string Words, string Meaning)> OpeningParts =
        [("NAME", "a name: lower-case letters and digits, joined by single hyphens"), ("[like NAME]", "another declaration of the kind, whose lines this one has too"), ("[\"TITLE\"]", "a title in double quotes")];

    public static SignatureCard? At(Spot spot)
    {
        var caret = new LineCaret(spot);
        if (caret.IsInComment || caret.IsFirstWord)
        {
            return null;
        }

        if (spot.Syntax.Statement is OpeningSyntax opening && spot.Own.Kind is { } kind)
        {
            return Card(kind.Keyword(), Vocabulary.Root(kind).Meaning, OpeningParts, ActiveOfOpening(opening, spot.Position.Character));
        }

        if (caret.Before is { Arguments: [.., QuerySyntax query] })
        {
            var (words, at) = QuestionSignature.Of(query);
            return Card("?", QuestionSignature.Meaning, words, at);
        }

        if (spot.Home is null || caret.Before is not { } before || Vocabulary.Find(spot.Home, before.Keyword.Text) is not { } fact || fact.Signature.Slots.IsEmpty)
        {
            return null;
        }

        var slots = fact.Signature.Slots;
        var parts = slots.Select(part => (Signature.WordsOf(part), part.Form.Words)).ToImmutableArray();
        var active = ActiveSlot(SlotWalk.Along(fact.Signature, before.Arguments), before.Arguments) is { } slot ? slots.IndexOf(slot) : -1;
        return Card(fact.Keyword, $"{Phrase.Capital(fact.Meaning)}\n\nFor instance `{fact.Keyword} {fact.Example}`", parts, active < 0 ? null : active);
    }

    private static Slot? ActiveSlot(SlotWalk walk, ImmutableArray<ArgumentSyntax> before) =>
        walk.WantsPoint || walk.PositionWords.Count > 0 || before is [.., MeasureSyntax { Terms: [.., { Quantity.Parts: [.., { Unit: null }] }] }]
            ? walk.Last
            : walk.Next.FirstOrDefault() ?? walk.Phrases.FirstOrDefault();

    private static int? ActiveOfOpening(OpeningSyntax opening, int caret) =>
        opening.Title is { } title && caret >= title.Span.Start ? 2
        : opening.LikeKeyword is { } like && caret >= like.Span.Start && (opening.Parent is not { } parent || caret <= parent.Span.End) ? 1
        : opening.Name is { } name && caret > name.Span.End ? (opening.LikeKeyword is null ? 1 : 2)
        : 0;

    private static SignatureCard Card(string keyword, string documentation, ImmutableArray<(string Words, string Meaning)> parts, int? active)
    {
        var label = keyword;
        var placed = ImmutableArray.CreateBuilder<SignaturePart>(parts.Length);
        foreach (var (words, meaning) in parts)
        {
            placed.Add(new SignaturePart(label.Length + 1, label.Length + 1 + words.Length, Phrase.Capital(meaning)));
            label += " " + words;
        }

        return new SignatureCard(label, documentation, placed.MoveToImmutable(), active);
    }
}

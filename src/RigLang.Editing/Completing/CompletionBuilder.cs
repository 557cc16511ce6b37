using System.Collections.Immutable;
using RigLang.Editing.Locating;
using RigLang.Model.Declaring;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>What could be written at a caret. Works on lines that are half written: it goes by what stands before the caret.</summary>
internal static class CompletionBuilder
{
    public static ImmutableArray<CompletionEntry> At(Spot spot, CancellationToken cancel)
    {
        var caret = new LineCaret(spot);
        if (caret.IsInComment)
        {
            return [];
        }

        if (caret.TextStart is { } text)
        {
            return spot.Syntax.Statement is UseSyntax ? [.. PathCompleter.Of(caret, text)] : [];
        }

        var entries = new Entries(caret);
        if (caret.IsFirstWord && caret.WordStart == 0)
        {
            OpeningCompleter.AddKinds(entries, caret);
        }
        else if (spot.Syntax.Statement is OpeningSyntax && spot.Own.Kind is { } kind)
        {
            OpeningCompleter.AddRest(entries, caret, kind);
        }
        else if (OpenBlock.At(spot, Indent(spot, caret)) is { } open)
        {
            AddInBlock(entries, caret, open, cancel);
        }

        return [.. entries.All];
    }

    private static void AddInBlock(Entries entries, LineCaret caret, OpenBlock open, CancellationToken cancel)
    {
        if (caret.IsFirstWord)
        {
            KeywordCompleter.Add(entries, caret, open);
        }
        else if (caret.Before is { } before && Vocabulary.Find(open.Home, before.Keyword.Text) is { } fact)
        {
            ValueCompleter.Add(entries, caret, open, fact, cancel);
        }
    }

    /// <summary>The line's own indent, or on an empty line the caret's column.</summary>
    private static int Indent(Spot spot, LineCaret caret) => caret.IsFirstWord && spot.Syntax.Statement is null ? caret.WordStart : spot.Syntax.IndentColumns;
}

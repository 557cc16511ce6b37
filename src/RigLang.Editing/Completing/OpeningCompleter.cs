using RigLang.Model.Declaring;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Completing;

/// <summary>The first column: what a line there may open, and the rest of an opening.</summary>
internal static class OpeningCompleter
{
    public static void AddKinds(Entries entries, LineCaret caret)
    {
        var isBlank = string.IsNullOrWhiteSpace(caret.Spot.Syntax.Text[caret.WordEnd..]);
        foreach (var kind in DeclarationKinds.All)
        {
            entries.Add(kind.Keyword(), CompletionSort.Declaration, Vocabulary.Root(kind).Meaning, insert: isBlank ? kind.Keyword() + " " : null, rank: '1');
            if (isBlank)
            {
                entries.Add(kind.Keyword() + " …", CompletionSort.Declaration, "with the lines wanted first", insert: Skeletons.Of(kind, caret.Spot), rank: '2', isSnippet: true);
            }
        }

        entries.Add("use", CompletionSort.Declaration, "shows this file the declarations of another", insert: isBlank ? "use \"$1\"" : null, rank: '3', isSnippet: isBlank);
        if (caret.Spot.Position.Line == 0)
        {
            entries.Add("language", CompletionSort.Declaration, "the edition of the language that the file is written in", insert: isBlank ? "language 1" : null, rank: '4');
        }
    }

    /// <summary>Behind the kind: <c>like</c>, then the names of that kind.</summary>
    public static void AddRest(Entries entries, LineCaret caret, DeclarationKind kind)
    {
        var words = caret.Spot.Syntax.Text[..caret.WordStart].Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words is [_, var name, "like"])
        {
            NameCompleter.AddDeclarations(entries, caret, kind, except: name);
        }
        else if (words is [_, _])
        {
            entries.Add("like", CompletionSort.Choice, $"takes over the lines of another {kind.Keyword()}", insert: "like ");
        }
    }
}

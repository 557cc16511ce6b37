using RigLang.Syntax.Scanning;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Formatting;

/// <summary>Whether two writings of a line say the same: the same atoms of the same classes, and the same comment.</summary>
internal static class SameAtoms
{
    public static bool In(LineSyntax line, string text)
    {
        var indent = text.Length - text.AsSpan().TrimStart(" \t\uFEFF").Length;
        var (was, now) = (LineScanner.Scan(line.Text, line.IndentLength), LineScanner.Scan(text, indent));
        return Essence(was).SequenceEqual(Essence(now)) && CommentOf(was) == CommentOf(now);
    }

    private static IEnumerable<(AtomKind Kind, string Text)> Essence(ScannedLine line) =>
        line.Atoms.Select(atom => (atom.Kind, line.Text.Substring(atom.Span.Start, atom.Span.Length)));

    private static string CommentOf(ScannedLine line) => line.Comment is { } comment ? line.Text.Substring(comment.Start, comment.Length).TrimEnd(' ', '\t') : "";
}

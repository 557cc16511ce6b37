using RigLang.Model.Binding;

namespace RigLang.Analysis.Curing;

/// <summary>Where a line is added to a block, and how far it is set in.</summary>
internal static class NewLine
{
    /// <summary>Behind the line that opens the block.</summary>
    public static Place Under(Fact opener) => opener.Place.EndOfLine;

    /// <summary>The text with its break and indent, set in like the block's other lines.</summary>
    public static string Text(Block block, string text) => "\n" + new string(' ', IndentIn(block)) + text;

    public static int IndentOf(Fact line) => line.Place.Declaration.Lines[line.Place.Line].IndentLength;

    private static int IndentIn(Block block) =>
        block.Facts.FirstOrDefault(line => line.Place.Declaration == block.Opener!.Place.Declaration) is { } sibling ? IndentOf(sibling) : IndentOf(block.Opener!) + 4;
}

namespace RigLang.Syntax.Tree;

/// <summary>How a line ends in the file.</summary>
public enum LineBreak
{
    /// <summary>The last line, without a break behind it.</summary>
    None,
    LineFeed,
    CarriageReturn,
    CarriageReturnLineFeed,
}

namespace RigLang.Syntax.Formatting;

/// <summary>One line as the formatter would have it. Of the last line of a file the new text may end in a line break.</summary>
/// <param name="Line">Counted from 0.</param>
public sealed record LineEdit(int Line, string NewText);

namespace RigLang.Syntax.Checks;

/// <summary>A change inside one line that cures a finding; the span is counted from the line's first character.</summary>
public sealed record LineFix(string Title, TextSpan Span, string NewText);

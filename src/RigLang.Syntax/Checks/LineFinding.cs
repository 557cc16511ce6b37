using System.Collections.Immutable;

namespace RigLang.Syntax.Checks;

/// <summary>What the reader of one line found wrong with it; the span is counted from the line's first character.</summary>
public sealed record LineFinding(CheckDeclaration Check, TextSpan Span, string Message, ImmutableArray<LineFix> Fixes)
{
    public LineFinding(CheckDeclaration check, TextSpan span, string message)
        : this(check, span, message, [])
    {
    }
}

using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Model.Binding;

/// <summary>The arguments of one line while they are being given to slots, and where findings about them go.</summary>
internal sealed class LineReading(FactDeclaration fact, FactSyntax syntax, Place line, List<Finding> findings)
{
    public FactDeclaration Fact { get; } = fact;

    public List<Finding> Findings { get; } = findings;

    /// <summary>The argument to look at next, or null behind the last.</summary>
    public ArgumentSyntax? Next => index < syntax.Arguments.Length ? syntax.Arguments[index] : null;

    public ArgumentSyntax? AfterNext => index + 1 < syntax.Arguments.Length ? syntax.Arguments[index + 1] : null;

    /// <summary>Whether the line's writing has an error behind its keyword; then nobody knows what its arguments should have been.</summary>
    public bool IsMiswritten => line.Declaration.Lines[line.Line].Findings.Any(finding => finding.Check.Severity == Severity.Error && finding.Span.Start >= syntax.Keyword.Span.End);

    /// <summary>Whether an error of the line's writing stands right behind a value: a unit with a full stop is no missing unit.</summary>
    public bool IsMiswrittenBehind(TextSpan value) => line.Declaration.Lines[line.Line].Findings.Any(finding =>
        finding.Check.Severity == Severity.Error && finding.Span.Start >= value.End && finding.Span.Start <= value.End + 1);

    private int index;

    public void Advance() => index++;

    public Place PlaceOf(TextSpan span) => line with { Span = span };

    /// <summary>Where something is missing: behind the last word of the line.</summary>
    public Place PlaceOfMissing => line with { Span = syntax.Span };

    public string TextOf(TextSpan span) => line.Declaration.Lines[line.Line].TextOf(span);
}

using RigLang.Model.Declaring;
using RigLang.Syntax;
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

    /// <summary>Whether something that the line reader didn't understand was passed already.</summary>
    public bool HasStrayBefore => syntax.Arguments.Take(index).Any(argument => argument is StraySyntax);

    private int index;

    public void Advance() => index++;

    public Place PlaceOf(TextSpan span) => line with { Span = span };

    /// <summary>Where something is missing: behind the last word of the line.</summary>
    public Place PlaceOfMissing => line with { Span = syntax.Span };

    public string TextOf(TextSpan span) => line.Declaration.Lines[line.Line].TextOf(span);
}

using RigLang.Syntax.Checks;

namespace RigLang.Editing.Hovering;

/// <summary>A check that an <c>allow</c> line names.</summary>
internal static class CheckCard
{
    public static CardText Of(CheckDeclaration check) => new CardText()
        .Paragraph($"**{check.Slug}** {check.Code}, {Word(check.Severity)}")
        .Paragraph(check.Summary)
        .Paragraph(check.Why)
        .Paragraph($"What to do: {check.Fix}")
        .Paragraph(check.Source is { } source ? $"Source: {source}" : "");

    public static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A line lacks a value that its keyword needs.</summary>
public static class ValueMissing
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL153",
        Slug = "value-missing",
        Severity = Severity.Error,
        Summary = "A line lacks a value that its keyword needs.",
        Why = "Half a line says nothing; the results that need it stay not computed.",
        Bad = """
            vehicle van
                wheelbase
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write the value; the message shows the form and an example.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place place, FactDeclaration fact, Slot slot) =>
        new(Declaration, place, $"`{fact.Keyword}` needs {Wanted(slot)}, for instance `{fact.Keyword} {fact.Example}`.");

    /// <summary>What stands there may be it, without the joining word.</summary>
    public static Finding ReportLead(Place value, FactDeclaration fact, Slot slot) =>
        new(Declaration, value, $"`{slot.Lead}` is missing before `{value.Text}`: `{fact.Keyword}` needs {Wanted(slot)}, for instance `{fact.Keyword} {fact.Example}`.")
        {
            Fixes = [new Fix($"Put `{slot.Lead}` before it", value with { Span = new TextSpan(value.Span.Start, 0) }, $"{slot.Lead} ")],
        };

    private static string Wanted(Slot slot) =>
        slot.Form is PositionForm ? $"its place behind `{slot.Lead}`"
        : slot is { Lead: not null, Role: not Signature.ValueRole } && slot.Lead != slot.Role ? $"{slot.Form.Words} for its {slot.Role} behind `{slot.Lead}`"
        : slot.Lead == slot.Role ? $"{slot.Form.Words} behind `{slot.Lead}`"
        : slot.Role == Signature.ValueRole ? slot.Form.Words
        : $"{slot.Form.Words} for its {slot.Role}";
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A quantity is zero or negative that cannot be.</summary>
public static class MustBePositive
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL212",
        Slug = "must-be-positive",
        Severity = Severity.Error,
        Summary = "A quantity is zero or negative that cannot be.",
        Why = "A wheelbase of nothing would divide by zero; the line is left out of all results.",
        Bad = """
            vehicle van
                wheelbase 0 m
            """,
        Good = """
            vehicle van
                wheelbase 2.94 m
            """,
        Fix = "Write the true value; positions behind and ahead are told by words, never by a sign.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place place, FactDeclaration fact, Measure measure) =>
        new(Declaration, place, $"`{fact.Keyword}` must be more than zero; {measure.Text} is left out of all results.");

    /// <summary>A distance with a sign: whether it is meant along or against the word behind it, only its author knows.</summary>
    public static Finding ReportPlace(Place place, Measure distance, bool isAhead, string point)
    {
        var plain = distance.Text.TrimStart('-', '\u2212');
        var (same, turned) = isAhead ? ("ahead of", "behind") : ("behind", "ahead of");
        return new Finding(Declaration, place, $"`{distance.Text}` has a sign, and a place has none: write `{plain} {same} {point}` or `{plain} {turned} {point}`. Until then it counts nowhere.")
        {
            Fixes = [new Fix($"Write `{plain} {turned} {point}`", place, $"{plain} {turned} {point}"), new Fix($"Write `{plain} {same} {point}`", place, $"{plain} {same} {point}")],
        };
    }
}

using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A number is written that has no usable value.</summary>
public static class NumberWithoutValue
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL208",
        Slug = "number-without-value",
        Severity = Severity.Error,
        Summary = "A number is written that has no usable value.",
        Why = "A fraction over nothing, a count of two and a half or a figure beyond all measure can't be reckoned with.",
        Bad = """
            trailer t
                length 5/0 in
            """,
        Good = """
            trailer t
                length 5/8 in
            """,
        Fix = "Write the value that was meant; the message says what is wrong with this one.",
        CanBeAllowed = false,
    };
}

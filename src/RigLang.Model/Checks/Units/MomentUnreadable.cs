using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A date or time cannot be read.</summary>
public static class MomentUnreadable
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL211",
        Slug = "moment-unreadable",
        Severity = Severity.Error,
        Summary = "A date or time cannot be read.",
        Why = "Arrival times would all be wrong, or none.",
        Bad = """
            weighing w
                date 2026-02-30
            """,
        Good = """
            weighing w
                date 2026-02-28
            """,
        Fix = "Write dates as 2026-09-05, times as 08:15, offsets as +10:00, tyre dates as 2024-W18.",
        CanBeAllowed = false,
    };
}

using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>A number is read, but written in a way that is easily misread.</summary>
public static class WrittenUnusually
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL210",
        Slug = "written-unusually",
        Severity = Severity.Note,
        Summary = "A number is read, but written in a way that is easily misread.",
        Why = "A point without a digit before it is overlooked on paper.",
        Bad = """
            vehicle van
                drag-area .92 m2
            """,
        Good = """
            vehicle van
                drag-area 0.92 m2
            """,
        Fix = "Take the offered spelling.",
    };
}

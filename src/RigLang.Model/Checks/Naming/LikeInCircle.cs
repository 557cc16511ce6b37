using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>Declarations are each like the other.</summary>
public static class LikeInCircle
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL158",
        Slug = "like-in-circle",
        Severity = Severity.Error,
        Summary = "Declarations are each like the other.",
        Why = "A circle of `like` has no first lines to take over.",
        Bad = """
            load a like b

            load b like a
            """,
        Good = """
            load a

            load b like a
            """,
        Fix = "Let one of them stand on its own.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place parent, string name) =>
        new(Declaration, parent, $"`{name}` is like itself in the end: follow the `like` lines round and one must stand on its own. Nothing is inherited here until then.");
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A chain of `like` is longer than eight.</summary>
public static class LikeTooDeep
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL159",
        Slug = "like-too-deep",
        Severity = Severity.Error,
        Summary = "A chain of `like` is longer than eight.",
        Why = "A reader must be able to follow where a line comes from.",
        Bad = """
            load a9 like a8 # and so on, nine deep
            """,
        Good = """
            load a9 like a1
            """,
        Fix = "Make it like a declaration nearer to the first.",
        CanBeAllowed = false,
    };

    public const int Deepest = 8;

    public static Finding Report(Place parent) =>
        new(Declaration, parent, $"This is the end of a chain of more than {Deepest} `like`; what lies beyond isn't inherited. Make it like one nearer to the first.");
}

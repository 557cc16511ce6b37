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
            load a
            load b like a
            load c like b
            load d like c
            load e like d
            load f like e
            load g like f
            load h like g
            load i like h
            load j like i
            """,
        Good = """
            load a
            load b like a
            load j like b
            """,
        Fix = "Make it like a declaration nearer to the first.",
        CanBeAllowed = false,
    };

    public const int Deepest = 8;

    public static Finding Report(Place parent) =>
        new(Declaration, parent, $"This is the end of a chain of more than {Deepest} `like`; what lies beyond isn't inherited. Make it like one nearer to the first.");
}

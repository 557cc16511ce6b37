using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>Two declarations of one kind in sight have the same name.</summary>
public static class NameTaken
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL156",
        Slug = "name-taken",
        Severity = Severity.Error,
        Summary = "Two declarations of one kind in sight have the same name.",
        Why = "A name must mean one thing; which of the two was meant could not be told.",
        Bad = """
            load summer
            load summer
            """,
        Good = """
            load summer
            load winter
            """,
        Fix = "Rename one of them.",
        CanBeAllowed = false,
    };

    public static Finding Report(Place second, string kind, string name, Place first) =>
        new(Declaration, second, $"There is already {Phrase.WithArticle(kind)} `{name}` in sight; rename one of the two, or indent the line if it belongs to the declaration above.")
        {
            Related = [new Related(first, $"the other `{name}`")],
        };
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>Under `like`, a new key is within two letters of an inherited one.</summary>
public static class AddsBesideInherited
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL161",
        Slug = "adds-beside-inherited",
        Severity = Severity.Warning,
        Summary = "Under `like`, a new key is within two letters of an inherited one.",
        Why = "A slip of the pen would add a second thing beside the one it was meant to replace.",
        Bad = """
            load full
                on vehicle
                    item bicycles 32 kg at 0.4 m behind rear-axle

            load light like full
                on vehicle
                    item bicycle 16 kg at 0.4 m behind rear-axle
            """,
        Good = """
            load full
                on vehicle
                    item bicycles 32 kg at 0.4 m behind rear-axle

            load light like full
                on vehicle
                    item bicycles 16 kg at 0.4 m behind rear-axle
            """,
        Fix = "Write the inherited name, or accept the finding if both are meant.",
    };

    public static Finding Report(Fact added, Fact inherited, Place key) =>
        new(Declaration, added.Place, $"This adds `{added.Title}` beside the inherited `{inherited.Title}`; both are aboard.")
        {
            Related = [new Related(inherited.Place, $"`{inherited.Title}` is inherited from here")],
            Fixes = [new Fix($"Replace `{inherited.Key}` instead", key, inherited.Key)],
        };
}

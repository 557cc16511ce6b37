using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Naming;

/// <summary>A `without` names a line that is not inherited.</summary>
public static class WithoutFindsNothing
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL160",
        Slug = "without-finds-nothing",
        Severity = Severity.Error,
        Summary = "A `without` names a line that is not inherited.",
        Why = "The line was meant to take something away; if it finds nothing, that something is still there under another name.",
        Bad = """
            load full

            load light like full
                on vehicle
                    without item bicycles
            """,
        Good = """
            load full
                on vehicle
                    item bicycles 32 kg at 0.4 m behind rear-axle

            load light like full
                on vehicle
                    without item bicycles
            """,
        Fix = "Name a line that the other declaration has, in the same block.",
        CanBeAllowed = false,
    };

    public static Finding Report(Fact without, string wanted, IEnumerable<string> inherited, bool hasParent)
    {
        if (!hasParent)
        {
            return new Finding(Declaration, without.Place, "`without` takes an inherited line away, but this declaration is like no other. Delete the line that you don't want.");
        }

        var near = Spelling.Nearest(wanted, inherited);
        return near is null
            ? new Finding(Declaration, without.Place, $"No inherited line here is `{wanted}`.")
            : new Finding(Declaration, without.Place, $"No inherited line here is `{wanted}`. Did you mean `{near}`?")
            {
                Fixes = [new Fix($"Write `without {near}`", without.Place, $"without {near}")],
            };
    }
}

using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks.Units;

/// <summary>Kilograms or pounds stand where a force is wanted, or the reverse.</summary>
public static class MassOrForce
{
    public static CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL205",
        Slug = "mass-or-force",
        Severity = Severity.Error,
        Summary = "Kilograms or pounds stand where a force is wanted, or the reverse.",
        Why = "The tool never slips gravity in unasked: a plate in kN and a scale in kg are different statements.",
        Bad = """
            vehicle van
                d-value 1000 kg
            """,
        Good = """
            vehicle van
                d-value 9.81 kN
            """,
        Fix = "Take the converted figure that the message offers, if that is what the plate means.",
        CanBeAllowed = false,
    };
}

namespace RigLang.Syntax.Checks;

/// <summary>The hundreds of the codes.</summary>
public enum CheckFamily
{
    Writing = 1,
    Units = 2,
    Masses = 3,
    Hitch = 4,
    Tyres = 5,
    Handling = 6,
    Trip = 7,
    Weighing = 8,
    Expectations = 9,
}

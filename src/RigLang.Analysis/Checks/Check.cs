using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks;

/// <summary>A check: its declaration and its logic, in one file. Which base class it has says what it looks at.</summary>
public abstract class Check
{
    public abstract CheckDeclaration Declaration { get; }

    private protected Finding Report(Place place, string message) => new(Declaration, place, message);
}

/// <summary>Looks at any declaration by itself, with the workspace for its names.</summary>
public abstract class DeclarationCheck : Check
{
    public abstract IEnumerable<Finding> Run(Workspace workspace, Declaration declaration);
}

/// <summary>Looks at a rig with its parts.</summary>
public abstract class RigCheck : Check
{
    public abstract IEnumerable<Finding> Run(RigStudy rig);
}

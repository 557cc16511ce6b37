using RigLang.Analysis.Studies;
using RigLang.Model.Binding;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>Looks at a logged drive with its rig.</summary>
public abstract class RunCheck : Check
{
    public abstract IEnumerable<Finding> Run(RunStudy run);
}

using RigLang.Analysis.Studies;
using RigLang.Model.Binding;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>Looks at all logged drives of a rig together: from the rig, where its file shows them, else from the first run of a file.</summary>
public abstract class RunSetCheck : Check
{
    public abstract IEnumerable<Finding> Run(RunSetStudy set);
}

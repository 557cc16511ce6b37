using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>Looks at what came of one question of a solved study.</summary>
public abstract class QuestionCheck : Check
{
    public abstract IEnumerable<Finding> Run(Study study, Answer answer);
}

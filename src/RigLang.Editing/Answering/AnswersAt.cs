using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Hovering;
using RigLang.Editing.Locating;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Editing.Answering;

/// <summary>The answers to the questions of a declaration: its own, or those that each rig gives which has it as a part.</summary>
internal static class AnswersAt
{
    /// <summary>With the solved study that gives each; in the order of the lines.</summary>
    public static IEnumerable<(Study Study, Answer Answer)> Of(View view, Declaration declaration)
    {
        IEnumerable<Study?> studies = declaration.Kind switch
        {
            DeclarationKind.Trip => [view.State.Analysis.Trip(declaration)],
            DeclarationKind.Weighing => [view.State.Analysis.Weighing(declaration)],
            DeclarationKind.Run => [view.State.Analysis.Run(declaration)],
            DeclarationKind.Practice => [],
            _ => Asks(declaration) ? Subjects.Rigs(view, declaration) : [],
        };
        return studies.OfType<Study>().SelectMany(study => study.Answers.Select(answer => (study, answer))).Where(pair => ReferenceEquals(pair.answer.Unknown.Root, declaration.Block));
    }

    /// <summary>Those of one line.</summary>
    public static IEnumerable<(Study Study, Answer Answer)> Of(View view, Declaration declaration, Fact line) => Of(view, declaration).Where(pair => ReferenceEquals(pair.Answer.Unknown.Line, line));

    /// <summary>Only then the rigs that name it need to be looked for.</summary>
    private static bool Asks(Declaration declaration) => declaration.Block.WithInner().Any(block => Unknown.In(block).Any());
}

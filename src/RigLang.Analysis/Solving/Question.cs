using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;

namespace RigLang.Analysis.Solving;

/// <summary>An unknown of a study, with where its value is looked for and whose result is wanted.</summary>
/// <param name="Subjects">What the result may be a result of, the nearest first; subjects of the study that is asked.</param>
internal sealed record Question(Unknown Unknown, IReadOnlyList<ISubject> Subjects, SearchRange Range)
{
    /// <summary>Set once it is known which of them the fact moves.</summary>
    public ISubject? Subject { get; init; }

    public static IEnumerable<Question> In(Study study) =>
        from place in Outward.Of(study)
        from unknown in Unknown.In(place.Block)
        select new Question(unknown, place.Subjects, SearchRange.Of(unknown, study));

    /// <summary>The result for one of the subjects, in a variation of their study; null when it is a result of something else.</summary>
    public Node<double>? ResultOf(ISubject subject, Study study)
    {
        var here = study.Here(subject)!;
        return Unknown.Result.Compute(Unknown.At is { } speed && here is RigStudy rig ? rig.AtSpeed(speed) : here);
    }
}

using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Questions;

/// <summary>The checks of lines that ask for a value with <c>?</c> and a goal.</summary>
public static class QuestionChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new QuestionWithoutEffect(), new QuestionOutOfReach(), new QuestionWithSeveralAnswers(), new QuestionsEntangled(), new QuestionNotComputed(), new QuestionRange(),
    ];
}

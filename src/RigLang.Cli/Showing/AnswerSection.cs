using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Terminals;

namespace RigLang.Cli.Showing;

/// <summary>What came of the lines that ask for a value with <c>?</c>.</summary>
internal static class AnswerSection
{
    public static Section Of(Study study) => new("Asked for with ?", [.. study.Answers.Select(Row)]);

    private static Row Row(Answer answer)
    {
        var name = Name(answer.Unknown);
        return answer.IsFound ? new Row(name, AnswerWords.Value(answer.Unknown, answer.Value), Words(answer)) : new Row(name, "", Words(answer), Ink.Warning);
    }

    /// <summary>"speed of leg quarry"; the declaration's own lines need no owner.</summary>
    public static string Name(Unknown unknown) => unknown.Block.Opener is { } opener ? $"{unknown.Name} of {opener.Title}" : unknown.Name;

    /// <summary>What it was found for, or why it wasn't found.</summary>
    public static string Words(Answer answer) => answer.Sort switch
    {
        AnswerSort.Found when answer.Others.IsEmpty => $"for {answer.Unknown.Wish}{AnswerWords.Where(answer)}{Binds(answer)}",
        AnswerSort.Found => $"for {answer.Unknown.Wish}{AnswerWords.Where(answer)}; so would {string.Join(" and ", answer.Others.Select(other => AnswerWords.Value(answer.Unknown, other)))}",
        AnswerSort.OutOfReach => $"{answer.Unknown.Wish} is out of reach: {AnswerWords.Result(answer, answer.Reached)} with {AnswerWords.Value(answer.Unknown, answer.Value)} is the nearest",
        AnswerSort.NoEffect => $"{answer.Unknown.Result.Name} doesn't rest on it",
        AnswerSort.NotComputed => $"{answer.Unknown.Result.Name} isn't computed{(answer.Missing is { } missing ? $": it needs {missing.Words}" : "")}",
        _ => $"not answered: {answer.Why}",
    };

    private static string Binds(Answer answer) => answer.Unknown.Target is null && answer.Binds is Binding.LowEnd or Binding.HighEnd or Binding.Flat ? $"; {AnswerWords.Binds(answer)}" : "";
}

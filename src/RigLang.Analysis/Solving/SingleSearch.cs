using RigLang.Analysis.Tracking;
using RigLang.Syntax.Tree;

namespace RigLang.Analysis.Solving;

/// <summary>Answers a question whose result rests on no other open question.</summary>
internal static class SingleSearch
{
    /// <param name="question">Its subject is known.</param>
    /// <param name="study">The study with what was found before.</param>
    /// <param name="cancel">Looked at before each look at the result.</param>
    public static Answer Answer(Question question, Study study, CancellationToken cancel)
    {
        var (unknown, range) = (question.Unknown, question.Range);
        var tried = Variation.Solved([new(unknown.Fact, range.Usual)]);
        Node<double> Look(double value) => question.ResultOf(question.Subject!, study.With(tried.At(value)))!;
        var search = new GoalSearch(
            value =>
            {
                cancel.ThrowIfCancellationRequested();
                return Look(value) is { IsComputed: true } node ? node.Value : double.NaN;
            },
            range.Low, range.High, unknown.Fact.Kind!.IsCount);
        if (search.Samples.Count == 0)
        {
            var lacking = Look(range.Usual);
            return Make(AnswerSort.NotComputed, double.NaN, double.NaN) with { Missing = lacking.Missing, Why = lacking.Refusal ?? "" };
        }

        if (unknown.Goal != QueryGoal.Value)
        {
            var sign = unknown.Goal == QueryGoal.Most ? 1 : -1;
            var (place, binds) = search.Best(value => sign * search.At(value), range.Usual)!.Value;
            return Make(AnswerSort.Found, place, search.At(place)) with { Binds = binds };
        }

        var target = unknown.Target!;
        var places = search.Places(target.Value, range.Usual);
        if (places.Count > 0)
        {
            var nearest = places.MinBy(place => Math.Abs(place - range.Usual));
            return Make(AnswerSort.Found, nearest, search.At(nearest)) with { Others = [.. places.Where(place => place != nearest)] };
        }

        var (reached, why) = search.Nearest(target.Value)!.Value;
        // A wish is met by what is written like it: whole numbers seldom hit a value, and an end of the range may lie a last digit beside it.
        var isClose = Math.Abs(search.At(reached) - target.Value) <= Rounding.Tolerance(target);
        return Make(isClose ? AnswerSort.Found : AnswerSort.OutOfReach, reached, search.At(reached)) with { Binds = why };

        Answer Make(AnswerSort sort, double value, double reached) => new(unknown, question.Subject, sort, value, reached) { Range = (range.Low, range.High), Looks = search.Looks };
    }
}

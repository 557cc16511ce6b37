using System.Collections.Immutable;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Editing.Reporting;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Answering;

/// <summary>Writes an answer in place of its question: the value, rounded so that the wish is still met, and the wish itself as an expectation.</summary>
internal static class AnswerFixes
{
    public static IEnumerable<OfferedChange> At(Spot spot) =>
        Fixes(spot).Select((fix, index) => FixEdits.Of(spot.State.Workspace, fix, index == 0)).OfType<EditorFix>()
            .Select(fix => new OfferedChange(fix.Title, ChangeSort.Cure, () => fix.Edits) { IsPreferred = fix.IsPreferred });

    private static IEnumerable<Fix> Fixes(Spot spot)
    {
        if (spot.Linked is not { } declaration || spot.Fact is not { } line || !ReferenceEquals(line.Place.Declaration, spot.Own?.Syntax))
        {
            yield break;
        }

        foreach (var (study, answer) in AnswersAt.Of(spot.View, declaration, line).Where(pair => pair.Answer.IsFound))
        {
            var value = Rounding.Of(study, answer).Text;
            var forWhom = declaration.Kind is DeclarationKind.Trip or DeclarationKind.Rig or DeclarationKind.Weighing or DeclarationKind.Run ? "" : $" for {study.Subjects[0].Title}";
            var write = new Replacement(answer.Unknown.Place, value);
            if (Expectation(study, answer) is { } expect)
            {
                yield return new Fix($"Write {value}{forWhom}, and expect {answer.Unknown.Wish}", [write, expect]);
            }

            yield return new Fix($"Write {value}{forWhom} ({answer.Unknown.Wish})", [write]);
        }
    }

    /// <summary>The wish as a test behind the line; null where none would be judged there, or it is none of a value.</summary>
    private static Replacement? Expectation(Study study, Answer answer)
    {
        var unknown = answer.Unknown;
        var isJudged = (study, answer.Subject) switch
        {
            (RigStudy rig, RigStudy) => ReferenceEquals(unknown.Block, rig.Rig),
            (TripStudy, LegSubject leg) => ReferenceEquals(unknown.Block, leg.Leg),
            (TripStudy, StopSubject stop) => ReferenceEquals(unknown.Block, stop.Block),
            (TripStudy trip, TripStudy) => ReferenceEquals(unknown.Block, trip.Block),
            (RunStudy run, RunStudy) => ReferenceEquals(unknown.Block, run.Block),
            _ => false,
        };
        if (!isJudged || unknown.Goal != QueryGoal.Value || unknown.Block.All(EverywhereFacts.Expect).Any(line => line.WordOf("result") == unknown.Result.Name))
        {
            return null;
        }

        var line = unknown.Line.Place;
        var text = line.Declaration.Lines[line.Line];
        var target = (line with { Span = unknown.Query.Target!.Span }).Text;
        var at = unknown.Query.At is { } speed ? $" at {(line with { Span = speed.Span }).Text}" : "";
        return new Replacement(line.EndOfLine, $"\n{text.Text[..text.IndentLength]}{EverywhereFacts.Expect.Keyword} {unknown.Result.Name} = {target}{at}");
    }
}

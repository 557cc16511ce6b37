using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Reasons;
using RigLang.Cli.Json;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Showing;

/// <summary>Makes the document that <c>show --json</c> writes.</summary>
internal sealed class ShowJson(Workspace workspace, Func<FileId, string> shown)
{
    public void Write(Stream stream, IEnumerable<(Subject Subject, UnitChoice Units)> subjects) =>
        JsonOutput.Write(stream, new ShowDocument("riglang-show", 1, RigLangProgram.Version, [.. subjects.Select(pair => Of(pair.Subject, pair.Units))]));

    private SubjectJson Of(Subject subject, UnitChoice units) => new(
        subject.Declaration.Kind.Keyword(),
        subject.Declaration.Name,
        subject.Declaration.Title,
        PlaceJson.Of(workspace, shown, subject.Declaration.Own.NamePlace),
        subject is ShownRig rig ? [.. RatingTable.Of(rig.Study).Select(Of)] : [],
        [
            .. subject.Parts.SelectMany(part => Catalogue.Results.Select(result => (Result: result, Node: result.Compute(part))))
                .Where(pair => pair.Node is { Applies: true }).Select(pair => Of(pair.Result, pair.Node!, units)),
        ])
    {
        Answers = subject.Asked.Answers is { IsEmpty: false } answers ? [.. answers.Select(Of)] : null,
    };

    private AnswerJson Of(Answer answer) => new(
        answer.Unknown.Line.Declaration.FullName,
        PlaceJson.Of(workspace, shown, answer.Unknown.Place),
        answer.Unknown.Wish,
        answer.Subject?.Title,
        answer.Sort switch
        {
            AnswerSort.Found => "found",
            AnswerSort.OutOfReach => "out-of-reach",
            AnswerSort.NoEffect => "no-effect",
            AnswerSort.NotComputed => "not-computed",
            _ => "refused",
        },
        Finite(answer.Value),
        answer.Others,
        Finite(answer.Reached),
        AnswerSection.Words(answer));

    private static LimitJson Of(RatingLine line) => new(
        line.Rating.Title,
        line.Rating.Load.Name,
        line.Rating.Subject.Title,
        line.Rating.Limit.FullName,
        line.Limit?.Value,
        Finite(line.Room),
        Finite(line.Use),
        line.Rating.Load.Kind.Dimension.ToString(),
        line.IsEstimated);

    private ResultJson Of(IResult result, Node<double> node, UnitChoice units) => Of(result, node, units, DoubtTable.Of(result, node.Subject));

    private ResultJson Of(IResult result, Node<double> node, UnitChoice units, Doubt? doubt) => new(
        result.Name,
        node.Subject.Title,
        result.Title,
        result.Kind.Name,
        node.IsComputed ? Finite(node.Value) : null,
        doubt is { HalfWidth: > 0 } ? Finite(doubt.HalfWidth) : null,
        result.Kind.Dimension.ToString(),
        node.IsComputed ? units.Write(result, node.Subject, node.Value) : null,
        node.IsEstimated,
        node.Missing is { } missing ? new NeedJson(missing.Fact.FullName, missing.Words) : null,
        [.. Ground.WithAbsent(node).Select(Of)],
        doubt is { Parts.IsEmpty: false } ? [.. doubt.Parts.Select(Of)] : null);

    private DoubtJson Of(DoubtPart part) => new(
        part.Fact.Fact.Fact.FullName, part.Fact.Fact.Words, part.Fact.Fact.Line is { } line ? PlaceJson.Of(workspace, shown, line.Place) : null, part.Fact.HalfWidth, part.Effect);

    private FactJson Of(FactRead read) => new(
        read.Fact.FullName,
        Words(read.Origin),
        read.Line is { } line ? PlaceJson.Of(workspace, shown, line.Place) : null,
        read.Line?.Place.Text,
        Finite(read.Value));

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static string Words(ReadOrigin origin) => origin switch
    {
        ReadOrigin.Written => "written",
        ReadOrigin.Varied => "varied",
        ReadOrigin.Solved => "solved",
        ReadOrigin.Default => "default",
        ReadOrigin.Practice => "practice",
        ReadOrigin.Estimate => "estimate",
        ReadOrigin.StandIn => "stand-in",
        ReadOrigin.Absent => "absent",
        _ => "missing",
    };
}

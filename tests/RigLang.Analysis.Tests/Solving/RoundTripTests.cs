using System.Globalization;
using RigLang.Analysis.Results;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Analysis.Tests.Solving;

/// <summary>
/// The numbers of the examples, each asked for by what the file itself makes of it: the number that stood there has to be among the answers. Nobody tells the
/// solver what stood there.
/// </summary>
public sealed class RoundTripTests
{
    public static TheoryData<int> Examples => [.. Enumerable.Range(0, Example.All.Count)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void What_stood_in_the_file_is_found_by_what_came_of_it(int example)
    {
        var text = Example.All[example];
        var (asked, narrow, wrong) = (0, 0, new List<string>());
        foreach (var study in StudiesOf(Study.Of(text)))
        {
            var root = study.Subjects[0];
            var nodes = study.Subjects.SelectMany(subject => Catalogue.Results.Select(result => (Subject: subject, Result: result, Node: result.Compute(subject)))).Where(found => found.Node is { IsComputed: true }).ToList();
            foreach (var number in NumericFacts.Under(nodes.Select(found => (Node)found.Node!)).Where(IsAskable).DistinctBy(number => number.Fact.Line!.Place).Where((_, index) => index % 4 == 0).ToList())
            {
                var block = number.Fact.Block;
                // The result nearest to the line that moves with the number.
                var wanted = nodes.FirstOrDefault(found => IsNear(found.Subject, block) && Moves(study, number, found.Subject, found.Result));
                if (wanted.Result is null)
                {
                    continue;
                }

                var target = QuantityWriter.Write(wanted.Node!.Value, wanted.Result.Kind.Metric, 12);
                Answer? Ask(string within) => StudiesOf(Study.Of(WithQuestion(text, number, $"? for {wanted.Result.Name} = {target}{within}")).Solved).Single(other => other.Subjects[0].Title == root.Title)
                    .Answers.FirstOrDefault(answer => answer.Unknown.Line.Title == number.Fact.Line!.Title && answer.Unknown.Result == wanted.Result);
                var answer = Ask("");
                if (answer is { IsFound: false } && number.Value >= answer.Range.Low && number.Value <= answer.Range.High)
                {
                    // What matters only in a narrow stretch, as a gear between two others does, has to be looked for there.
                    answer = Ask($" within {QuantityWriter.Write(number.Value * 0.7, number.Kind.Metric, 6)} .. {QuantityWriter.Write(number.Value * 1.3, number.Kind.Metric, 6)}");
                    narrow++;
                }

                asked++;
                if (answer is null)
                {
                    wrong.Add($"{number.Fact} for {wanted.Result.Name} = {target}: not understood");
                }
                else if (number.Value >= answer.Range.Low && number.Value <= answer.Range.High && !Holds(answer, number.Value, wanted.Node!.Value))
                {
                    wrong.Add(string.Create(CultureInfo.InvariantCulture, $"{number.Fact} = {number.Value} for {wanted.Result.Name} = {target}: {answer.Sort} {answer.Value} {string.Join(' ', answer.Others)} {answer.Binds} {answer.Why}"));
                }
            }
        }

        wrong.Should().BeEmpty();
        asked.Should().BeGreaterThan(3);
        narrow.Should().BeLessThan(2 + (asked / 20));
    }

    /// <summary>The number itself is an answer, or the result is the same over a stretch that another place was taken from.</summary>
    private static bool Holds(Answer answer, double value, double target) =>
        answer.IsFound && (answer.Others.Append(answer.Value).Any(found => Math.Abs(found - value) <= 1e-4 * Math.Max(Math.Abs(value), answer.Range.High - answer.Range.Low))
            || Math.Abs(answer.Reached - target) <= 1e-9 * Math.Abs(target));

    private static bool IsAskable(NumericFact number) =>
        number is { Origin: ReadOrigin.Written, Fact.Written: not null } && number.Fact.Line!.Values[number.Fact.Role] is MeasureValue && !number.Kind.IsCount && number.Kind.Metric.Currency is null
        && !number.Fact.Fact.KeyRoles.Contains(number.Fact.Role) && number.Fact.Fact.Signature.Slots.First(slot => slot.Role == number.Fact.Role) is { Form: QuantityForm or QuantityOrNoneForm, Lead: null };

    private static bool IsNear(ISubject subject, Block block) => subject switch
    {
        Studies.AxleSubject axle => ReferenceEquals(axle.Axle, block),
        Studies.LegSubject leg => ReferenceEquals(leg.Leg, block),
        Studies.StopSubject stop => ReferenceEquals(stop.Block, block),
        Studies.ReadingSubject => false,
        Analysis.Tracking.Study => true,
        _ => false,
    };

    private static bool Moves(Analysis.Tracking.Study study, NumericFact number, ISubject subject, IResult result)
    {
        var varied = study.With(number.Fact, (number.Value * 1.02) + 1e-9);
        return result.Compute(varied.Here(subject)!) is { IsComputed: true } node && Math.Abs(node.Value - result.Compute(subject)!.Value) > 1e-6 * Math.Abs(node.Value);
    }

    private static IEnumerable<Analysis.Tracking.Study> StudiesOf(WorkspaceAnalysis analysis)
    {
        foreach (var declaration in analysis.Workspace.Link(Study.File)!.Declarations)
        {
            Analysis.Tracking.Study? study = declaration.Kind switch
            {
                DeclarationKind.Rig => analysis.Rig(declaration),
                DeclarationKind.Trip => analysis.Trip(declaration),
                DeclarationKind.Run => analysis.Run(declaration),
                _ => null,
            };
            if (study is not null)
            {
                yield return study;
            }
        }
    }

    private static string WithQuestion(string text, NumericFact number, string question)
    {
        var place = number.Fact.Line!.Place;
        var span = number.Fact.Line.Values[number.Fact.Role].Span;
        var lines = text.Split('\n');
        var first = 0;
        foreach (var own in Study.Of(text).Workspace.Find(Study.File)!.Declarations)
        {
            if (own.Syntax.Lines[0].Text == place.Declaration.Lines[0].Text)
            {
                break;
            }

            first += own.Syntax.Lines.Length;
        }

        var old = lines[first + place.Line];
        lines[first + place.Line] = string.Concat(old.AsSpan(0, span.Start), question, old.AsSpan(span.Start + span.Length));
        return string.Join('\n', lines);
    }
}

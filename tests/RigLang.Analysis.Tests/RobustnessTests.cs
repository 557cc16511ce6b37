using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Tests;

/// <summary>Whatever stands in a file: nothing throws, no result is infinite, and nothing is computed from what is missing.</summary>
public sealed class RobustnessTests
{
    private static readonly string[] Odd =
    [
        "0 m", "-1 kg", "1e9 kg", "?", "none", "nothing", "\"", "999999999999999999999 kg", "0 %", "1:0", "5/0 in", "± 5 kg", "..", "at", "0 km/h", "1 m", "0.0000001 m", "axle", "🚐",
    ];

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Files_with_lines_lost_swapped_and_spoilt_are_borne(int seed)
    {
        var random = new Random(seed);
        foreach (var text in Example.All)
        {
            Exercise(Spoil(text, random));
        }
    }

    [Fact]
    public void Every_line_may_be_missing()
    {
        foreach (var text in Example.All)
        {
            var lines = text.Split('\n');
            for (var index = 0; index < lines.Length; index += 3)
            {
                Exercise(string.Join('\n', lines.Where((_, at) => at != index)));
            }
        }
    }

    private static string Spoil(string text, Random random)
    {
        var lines = text.Split('\n').ToList();
        for (var change = 0; change < 8; change++)
        {
            var at = random.Next(lines.Count);
            switch (random.Next(4))
            {
                case 0:
                    lines.RemoveAt(at);
                    break;
                case 1:
                    lines.Insert(at, lines[random.Next(lines.Count)]);
                    break;
                case 2:
                    var words = lines[at].TrimStart().Split(' ')[0];
                    lines[at] = $"    {(lines[at].StartsWith("        ", StringComparison.Ordinal) ? "    " : "")}{words} {Odd[random.Next(Odd.Length)]}";
                    break;
                default:
                    lines[at] = "    " + lines[at];
                    break;
            }
        }

        return string.Join('\n', lines);
    }

    private static void Exercise(string text)
    {
        var file = new FileId("/rigs/a.rig");
        var analysis = new WorkspaceAnalysis(new Workspace(new MemoryFileSource((file.Path, text)), "/rigs"));

        foreach (var finding in analysis.Findings(file).Remaining)
        {
            finding.Message.Should().NotBeEmpty();
            analysis.Workspace.LineOf(finding.Place).Should().NotBeNull();
        }

        foreach (var subject in Subjects(analysis, file))
        {
            foreach (var node in Catalogue.Results.Select(result => result.Compute(subject)).OfType<Node<double>>())
            {
                double.IsInfinity(node.Value).Should().BeFalse($"{node.Computation} of {subject.Title} must not be infinite");
                node.IsComputed.Should().Be(node.Applies && node.Missing is null && !double.IsNaN(node.Value));
            }
        }
    }

    private static IEnumerable<ISubject> Subjects(WorkspaceAnalysis analysis, FileId file)
    {
        foreach (var declaration in analysis.Workspace.Link(file)!.Declarations)
        {
            switch (declaration.Kind)
            {
                case DeclarationKind.Rig:
                    var rig = analysis.Rig(declaration);
                    yield return rig;
                    foreach (var axle in rig.Axles)
                    {
                        yield return axle;
                    }

                    break;
                case DeclarationKind.Trip when analysis.Trip(declaration) is { } trip:
                    yield return trip;
                    foreach (var leg in trip.Legs)
                    {
                        yield return leg;
                        if (leg.Stop is { } stop)
                        {
                            yield return stop;
                        }
                    }

                    break;
                case DeclarationKind.Weighing when analysis.Weighing(declaration) is { } weighing:
                    yield return weighing;
                    foreach (var reading in weighing.Passes.SelectMany(pass => pass.Readings))
                    {
                        yield return reading;
                    }

                    break;
            }
        }
    }
}

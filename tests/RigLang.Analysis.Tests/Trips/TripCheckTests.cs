using RigLang.Analysis.Checks;
using RigLang.Analysis.Checks.Trips;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Trips;

public class TripCheckTests
{
    public static TheoryData<string> Slugs => [.. TripChecks.All.Select(check => check.Declaration.Slug).Distinct()];

    [Theory]
    [MemberData(nameof(Slugs))]
    public void Each_check_fires_on_its_bad_example_and_not_on_its_good_one(string slug)
    {
        var check = AnalysisChecks.Find(slug)!;

        Fired(check, check.Bad).Should().Contain(slug);
        Fired(check, check.Good).Should().NotContain(slug);
    }

    [Theory]
    [MemberData(nameof(Slugs))]
    public void A_good_example_has_nothing_else_wrong_with_it(string slug)
    {
        // The rig of the expectation's example stands for a whole rig and names a vehicle that isn't there.
        if (slug != "expectation-missed")
        {
            var check = AnalysisChecks.Find(slug)!;

            Fired(check, check.Good).Should().BeEmpty();
        }
    }

    private static IEnumerable<string> Fired(CheckDeclaration check, string text)
    {
        var workspace = new Workspace(new MemoryFileSource([(Study.File.Path, text), .. check.Beside.Select(file => ("/rigs/" + file.Path, file.Text))]), "/rigs");
        return new WorkspaceAnalysis(workspace).Findings(Study.File).Remaining.Select(finding => finding.Check.Slug);
    }
}

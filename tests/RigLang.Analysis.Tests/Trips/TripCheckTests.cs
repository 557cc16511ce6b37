using RigLang.Analysis.Checks;
using RigLang.Analysis.Checks.Trips;

namespace RigLang.Analysis.Tests.Trips;

public class TripCheckTests
{
    public static TheoryData<string> Slugs => [.. TripChecks.All.Select(check => check.Declaration.Slug).Distinct()];

    [Theory]
    [MemberData(nameof(Slugs))]
    public void A_good_example_has_nothing_at_all_wrong_with_it(string slug)
    {
        var check = AnalysisChecks.Find(slug)!;

        // What a verdict would still want is told as a note; an example of something else may do without.
        Study.Of(check.Good, [.. check.Beside]).Findings(Study.File).Remaining.Where(finding => finding.Check.Slug != "ratings-missing").Select(finding => finding.Message).Should().BeEmpty();
    }
}

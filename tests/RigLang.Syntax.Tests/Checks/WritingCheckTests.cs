using RigLang.Syntax.Checks;
using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Tests.Checks;

public class WritingCheckTests
{
    public static TheoryData<string> Codes => new(WritingChecks.All.Select(check => check.Code));

    [Theory]
    [MemberData(nameof(Codes))]
    public void Bad_example_provokes_the_check_and_no_other(string code)
    {
        var check = WritingChecks.All.Single(check => check.Code == code);
        FileSyntax.Parse(check.Bad).Findings().Select(at => at.Finding.Check).Distinct().Should().Equal(check);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Good_example_has_no_finding(string code) =>
        FileSyntax.Parse(WritingChecks.All.Single(check => check.Code == code).Good).Findings().Should().BeEmpty();

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_fix_of_the_bad_example_cures_it(string code)
    {
        var check = WritingChecks.All.Single(check => check.Code == code);
        var file = FileSyntax.Parse(check.Bad);
        foreach (var (line, finding) in file.Findings())
        {
            foreach (var fix in finding.Fixes)
            {
                var mended = file.WithChange(new LinePosition(line, fix.Span.Start), new LinePosition(line, fix.Span.End), fix.NewText);
                mended.Findings().Count(at => at.Finding.Check == check).Should().BeLessThan(file.Findings().Count(at => at.Finding.Check == check), fix.Title);
            }
        }
    }

    [Fact]
    public void Codes_and_slugs_are_unique_and_in_order()
    {
        WritingChecks.All.Select(check => check.Code).Should().OnlyHaveUniqueItems().And.BeInAscendingOrder(StringComparer.Ordinal);
        WritingChecks.All.Select(check => check.Slug).Should().OnlyHaveUniqueItems();
        WritingChecks.All.Should().OnlyContain(check => check.Family == CheckFamily.Writing);
    }

    [Fact]
    public void Every_check_of_the_family_is_listed()
    {
        var declared = typeof(WritingChecks).Assembly.GetTypes()
            .Where(type => type.Namespace == "RigLang.Syntax.Checks.Writing")
            .Select(type => type.GetField("Check")?.GetValue(null))
            .OfType<CheckDeclaration>();
        WritingChecks.All.Should().BeEquivalentTo(declared);
    }
}

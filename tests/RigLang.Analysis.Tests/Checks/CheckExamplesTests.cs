using System.Collections.Immutable;
using RigLang.Analysis.Checks;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>The examples on each check's page really show it: what holds for one check holds for all, those to come included.</summary>
public sealed class CheckExamplesTests
{
    public static TheoryData<string> Codes => new(AnalysisChecks.All.Select(check => check.Declaration.Code).Distinct());

    [Theory]
    [MemberData(nameof(Codes))]
    public void Bad_example_provokes_the_check(string code) =>
        Found(Check(code), Check(code).Bad).Select(finding => finding.Check.Code).Should().Contain(code);

    [Theory]
    [MemberData(nameof(Codes))]
    public void Good_example_does_not(string code) =>
        Found(Check(code), Check(code).Good).Select(finding => finding.Check.Code).Should().NotContain(code);

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_finding_has_words_and_a_place_in_the_file(string code)
    {
        foreach (var finding in Found(Check(code), Check(code).Bad).Where(finding => finding.Check.Code == code))
        {
            finding.Message.Should().NotBeNullOrWhiteSpace();
            finding.Place.File.Should().Be(Study.File);
            finding.Place.Text.Should().NotBeNull();
            finding.Message.Should().NotContain("NaN").And.NotContain("  ");
        }
    }

    [Fact]
    public void Codes_and_slugs_are_used_once()
    {
        AnalysisChecks.Declarations.Select(check => check.Code).Should().OnlyHaveUniqueItems();
        AnalysisChecks.Declarations.Select(check => check.Slug).Should().OnlyHaveUniqueItems();
        AnalysisChecks.Declarations.Should().OnlyContain(check => Enum.IsDefined(check.Family));
    }

    private static ImmutableArray<Finding> Found(CheckDeclaration check, string text) => Study.Of(text, [.. check.Beside]).Solved.Findings(Study.File).Remaining;

    private static CheckDeclaration Check(string code) => AnalysisChecks.Find(code)!;
}

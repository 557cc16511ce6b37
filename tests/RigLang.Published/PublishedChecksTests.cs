namespace RigLang.Published;

public sealed class PublishedChecksTests
{
    private static readonly Dictionary<string, PublishedCheck> ByName = Catalogue.All.ToDictionary(check => check.Name);

    public static TheoryData<string> Names => [.. ByName.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_model_gives_the_published_value(string name)
    {
        PublishedCheck check = ByName[name];
        check.Got.Should().BeApproximately(check.Expected, check.Tolerance, "{0} is {1} for {2}", check.Quantity, check.Source, check.Inputs);
    }

    [Fact]
    public void Every_check_names_its_source_and_has_a_tolerance_that_can_fail()
    {
        Catalogue.All.Should().OnlyContain(check => check.Source.Length > 10 && check.Tolerance > 0);
        Catalogue.All.Should().OnlyContain(check => check.Expected == 0 || check.Tolerance < 0.2 * Math.Abs(check.Expected));
    }
}

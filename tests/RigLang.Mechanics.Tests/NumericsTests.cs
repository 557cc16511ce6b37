using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

public sealed class NumericsTests
{
    [Fact]
    public void One_root()
    {
        SearchResult result = Root.Find(x => (x * x) - 2, 0, 3);
        result.Outcome.Should().Be(SearchOutcome.One);
        result.First.Should().BeApproximately(Math.Sqrt(2), 1e-14);
    }

    [Fact]
    public void Several_roots()
    {
        SearchResult result = Root.Find(Math.Sin, 1, 10);
        result.Outcome.Should().Be(SearchOutcome.Several);
        result.Places.Should().HaveCount(3);
        result.Places[2].Should().BeApproximately(3 * Math.PI, 1e-12);
    }

    [Fact]
    public void No_root() => Root.Find(x => x + 1, 0, 3).Outcome.Should().Be(SearchOutcome.None);

    [Fact]
    public void A_jump_is_no_root() => Root.Find(x => x < 1.23 ? -1 : 1, 0, 3).Outcome.Should().Be(SearchOutcome.None);

    [Fact]
    public void A_root_on_a_bound_counts_once() => Root.Find(x => x, 0, 1).Places.Should().Equal(0);

    [Fact]
    public void What_is_never_computable_is_said_to_be_so()
    {
        Root.Find(_ => double.NaN, 0, 1).Outcome.Should().Be(SearchOutcome.NotComputable);
        Root.Find(x => x, 1, 0).Outcome.Should().Be(SearchOutcome.NotComputable);
        Root.Find(x => x, double.NaN, 1).Outcome.Should().Be(SearchOutcome.NotComputable);
        Extremum.Least(_ => double.NaN, 0, 1).Place.Should().Be(double.NaN);
    }

    [Fact]
    public void A_function_with_holes_is_searched_where_it_is_known() =>
        Root.Find(x => x < 1 ? double.NaN : x - 2, 0, 3).First.Should().BeApproximately(2, 1e-12);

    [Property]
    public void A_found_root_is_one(int a, int b, int c)
    {
        double p = Between(a, -5, 5), q = Between(b, -5, 5), r = Between(c, -5, 5);
        double F(double x) => (((x + p) * x) + q) * x * Math.Exp(x / 5) + r;
        foreach (double root in Root.Find(F, -4, 4).Places)
            F(root).Should().BeApproximately(0, 1e-9);
    }

    [Property]
    public void The_least_of_a_parabola_is_its_foot(int foot)
    {
        double at = Between(foot, -3, 3);
        Extremum.Least(x => ((x - at) * (x - at)) + 1, -3, 3).Place.Should().BeApproximately(at, 1e-6);
    }
}

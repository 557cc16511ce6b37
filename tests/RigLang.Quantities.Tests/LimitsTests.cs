namespace RigLang.Quantities.Tests;

public class LimitsTests
{
    [Theory]
    [InlineData(1587.5732950000001, 1587.573295, false)]
    [InlineData(1587.58, 1587.573295, true)]
    [InlineData(0, 0, false)]
    [InlineData(1e-300, 0, true)]
    [InlineData(-1, -2, true)]
    [InlineData(double.NaN, 1, false)]
    [InlineData(1, double.NaN, false)]
    [InlineData(double.PositiveInfinity, 1, true)]
    [InlineData(1, double.PositiveInfinity, false)]
    public void Only_what_is_clearly_over_a_limit_exceeds_it(double value, double limit, bool exceeds)
    {
        Limits.Exceeds(value, limit).Should().Be(exceeds);
        Limits.FallsBelow(-value, -limit).Should().Be(exceeds);
    }

    [Theory]
    [InlineData(40, Plausibility.Low)]
    [InlineData(50, Plausibility.Plausible)]
    [InlineData(5000, Plausibility.Plausible)]
    [InlineData(5001, Plausibility.High)]
    [InlineData(double.NaN, Plausibility.Plausible)]
    public void A_magnitude_is_judged_with_the_ends_included(double si, Plausibility expected) =>
        new PlausibleRange(50, 5000).Judge(si).Should().Be(expected);
}

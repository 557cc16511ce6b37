namespace RigLang.Mechanics.Tests;

/// <summary>Regression values of the coupling formulas; not outside checks.</summary>
public sealed class CouplingTests
{
    [Theory]
    [InlineData(2000, 1500, 8409)]
    [InlineData(2500, 2500, 12263)]
    [InlineData(2600, 3500, 14635)]
    public void D_value(double vehicle, double trailer, double expected) => CouplingValues.D(vehicle, trailer).Should().BeApproximately(expected, 0.6);

    [Fact]
    public void The_largest_trailer_of_a_plate_gives_its_D_value_back()
    {
        double largest = CouplingValues.LargestTrailer(2100, 10_400);
        largest.Should().BeApproximately(2141, 0.6);
        CouplingValues.D(2100, largest).Should().BeApproximately(10_400, 1e-6);
    }

    [Fact]
    public void A_plate_above_the_vehicles_weight_sets_no_limit() => CouplingValues.LargestTrailer(1000, 9_810).Should().Be(double.NaN);

    [Theory]
    [InlineData(RearSuspension.Air, 32_000)]
    [InlineData(RearSuspension.Other, 42_667)]
    public void V_value(RearSuspension suspension, double expected) => CouplingValues.V(10_000, 8, 6, suspension).Should().BeApproximately(expected, 0.5);

    [Fact]
    public void A_short_loading_floor_counts_as_long_as_the_drawbar() =>
        CouplingValues.V(10_000, 3, 6, RearSuspension.Air).Should().BeApproximately(18_000, 1e-6);
}

using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values, and exponents of load tables recalled from memory.</summary>
public sealed class TyreTests
{
    [Theory]
    [InlineData(0.5, 0.90972)]
    [InlineData(0.585, 0.89520)]
    [InlineData(0.7, 0.87593)]
    [InlineData(0.8, 0.85951)]
    public void Load_falls_with_pressure_by_the_exponent(double exponent, double share) =>
        TyreLoad.AtPressure(1000, 2.4e5, 2.9e5, exponent).Should().BeApproximately(1000 * share, 0.006);

    [Theory]
    [InlineData(1753, 26, 2028, 35, 0.490)]
    [InlineData(1945, 50, 2680, 80, 0.682)]
    [InlineData(2150, 50, 2540, 65, 0.635)]
    [InlineData(2540, 65, 2830, 80, 0.521)]
    public void Two_points_of_a_load_table_imply_an_exponent(double load1, double pressure1, double load2, double pressure2, double exponent) =>
        TyreLoad.Exponent(load1, pressure1, load2, pressure2).Should().BeApproximately(exponent, 0.0006);

    [Theory]
    [InlineData(0.235, 0.45, 18, 0.6687, 2.0395, 0.32460)]
    [InlineData(0.225, 0.75, 15, 0.7185, 2.1914, 0.34878)]
    [InlineData(0.245, 0.75, 16, 0.7739, 2.3604, 0.37567)]
    public void Lengths_follow_from_the_size(double width, double aspect, double rimInches, double diameter, double circumference, double radius)
    {
        double outer = TyreSize.OuterDiameter(width, aspect, rimInches * 0.0254);
        outer.Should().BeApproximately(diameter, 0.00006);
        TyreSize.RollingCircumference(outer).Should().BeApproximately(circumference, 0.0001);
        TyreSize.RollingRadius(outer).Should().BeApproximately(radius, 0.00001);
    }

    [Property]
    public void More_pressure_than_rated_never_raises_the_rating(int pressure, int exponent)
    {
        double p = Between(pressure, 0, 9e5), capacity = TyreLoad.AtPressure(1000, p, 4.5e5, Between(exponent, 0.4, 0.9));
        capacity.Should().BeInRange(0, 1000);
        if (p >= 4.5e5)
            capacity.Should().Be(1000);
    }

    [Property]
    public void The_pressure_for_a_load_carries_it(int load, int exponent)
    {
        double n = Between(exponent, 0.4, 0.9), mass = Between(load, 200, 1000);
        TyreLoad.AtPressure(1000, TyreLoad.PressureFor(mass, 1000, 4.5e5, n), 4.5e5, n).Should().BeApproximately(mass, 1e-6);
    }

    [Fact]
    public void No_pressure_carries_more_than_the_rating() => TyreLoad.PressureFor(1001, 1000, 4.5e5, 0.8).Should().Be(double.NaN);

    [Fact]
    public void Load_indices_rise_and_follow_their_power_of_ten()
    {
        for (int index = LoadIndex.Lowest; index <= LoadIndex.Highest; index++)
        {
            if (index > LoadIndex.Lowest)
                LoadIndex.Mass(index).Should().BeGreaterThan(LoadIndex.Mass(index - 1));
            LoadIndex.Mass(index).Should().BeApproximately(45 * Math.Pow(10, index / 80.0), 0.03 * LoadIndex.Mass(index));
        }
    }

    [Theory]
    [InlineData(750, 98)]
    [InlineData(751, 99)]
    [InlineData(0, 60)]
    [InlineData(3350, 150)]
    public void The_needed_index_carries_the_mass(double mass, int index) => LoadIndex.Needed(mass).Should().Be(index);

    [Theory]
    [InlineData(3351)]
    [InlineData(double.NaN)]
    [InlineData(-1)]
    public void Some_masses_have_no_index(double mass) => LoadIndex.Needed(mass).Should().BeNull();

    [Fact]
    public void Indices_outside_the_table_have_no_mass()
    {
        LoadIndex.Mass(59).Should().Be(double.NaN);
        LoadIndex.Mass(151).Should().Be(double.NaN);
        SpeedSymbols.Speed((SpeedSymbol)99).Should().Be(double.NaN);
    }
}

namespace RigLang.Mechanics.Tests;

/// <summary>Numbers outside a model's domain give NaN, never an exception or an infinity.</summary>
public sealed class RefusalTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_wheelbase_that_cannot_be_gives_no_loads(double wheelbase)
    {
        VehicleStatics.FromItems([new(100, 1)], wheelbase).Rear.Should().Be(double.NaN);
        CoupledLoads loads = Hitch.Couple(ReferenceRig.Vehicle with { Wheelbase = wheelbase }, ReferenceRig.Trailer, 1000);
        loads.Front.Should().Be(double.NaN);
        loads.Ball.Should().Be((300 * Constants.Gravity) - 200, "the ball force does not need the wheelbase");
    }

    [Fact]
    public void Overflow_is_not_computable() => TrailerStatics.TongueMass(1e300, -1e300, 1e-300).Should().Be(double.NaN);

    [Fact]
    public void No_axles_carry_nothing_computable()
    {
        AxleGroup.Independent(1000, 4, []).Ball.Should().Be(double.NaN);
        AxleGroup.Equalised(1000, 4, []).Ball.Should().Be(double.NaN);
    }
}

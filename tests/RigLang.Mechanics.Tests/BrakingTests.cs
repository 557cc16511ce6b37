using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values of braking and descents; not outside checks.</summary>
public sealed class BrakingTests
{
    private const double KilowattHour = 3.6e6;

    [Fact]
    public void An_unbraked_trailer_lengthens_the_stop()
    {
        RigStop stop = RigBraking.Full(2000, 750, 0.8, 0);
        stop.Deceleration.Should().BeApproximately(5.706, 0.0006);
        StoppingDistance.Of(100 / 3.6, 0, stop.Deceleration).Should().BeApproximately(67.62, 0.006);
        (stop.Push / 1000).Should().BeApproximately(4.279, 0.0006);
    }

    [Theory]
    [InlineData(0, 3.843, 9.607)]
    [InlineData(0.4, 5.844, 4.803)]
    [InlineData(0.5, 6.344, 3.602)]
    [InlineData(0.8, 7.845, 0)]
    public void Trailer_brakes_take_the_push_away(double ratio, double deceleration, double kilonewtons)
    {
        RigStop stop = RigBraking.Full(2400, 2500, 0.8, ratio);
        stop.Deceleration.Should().BeApproximately(deceleration, 0.0006);
        (stop.Push / 1000).Should().BeApproximately(kilonewtons, 0.0006);
    }

    [Property]
    public void An_overrun_brake_settles_where_its_push_and_its_force_agree(int vehicle, int trailer, int grip, int ratio)
    {
        double tow = Between(vehicle, 800, 3500) * Constants.Gravity, behind = Between(trailer, 0, 3500) * Constants.Gravity, μ = Between(grip, 0.05, 1.1), most = Between(ratio, 0, 0.7);
        RigStop stop = RigBraking.OnWheels(tow, behind, behind / Constants.Gravity, μ, most, OverrunBrake.ByRegulation);
        // By going round: the push works the brake, the brake lessens the push.
        double brake = 0;
        for (int i = 0; i < 5000; i++)
        {
            double deceleration = Constants.Gravity * ((μ * tow) + brake) / (tow + behind);
            double push = (behind * deceleration / Constants.Gravity) - brake;
            brake += 0.05 * (Math.Clamp(7 * (push - (0.03 * behind)), 0, Math.Min(μ, most) * behind) - brake);
        }

        stop.Deceleration.Should().BeApproximately(Constants.Gravity * ((μ * tow) + brake) / (tow + behind), 1e-3);
        stop.Push.Should().BeApproximately((behind * stop.Deceleration / Constants.Gravity) - brake, 5);
        stop.Deceleration.Should().BeLessThanOrEqualTo(RigBraking.OnWheels(tow, behind, behind / Constants.Gravity, μ, most).Deceleration + 1e-9);
    }

    [Property]
    public void Brake_forces_slow_the_whole_and_the_push_slows_the_trailer(int vehicle, int trailer, int tongue, int ratio)
    {
        double tow = Between(vehicle, 800, 3500), behind = Between(trailer, 1, 3500), on = behind * Between(tongue, 0, 0.15), z = Between(ratio, 0, 0.8), g = Constants.Gravity;
        RigStop stop = RigBraking.OnWheels((tow + on) * g, (behind - on) * g, behind, 0.8, z);
        double trailerForce = z * (behind - on) * g;
        ((tow + behind) * stop.Deceleration).Should().BeApproximately((0.8 * (tow + on) * g) + trailerForce, 1e-6);
        (behind * stop.Deceleration).Should().BeApproximately(stop.Push + trailerForce, 1e-6);
        // With nothing on the tongue it is the reference's formula.
        RigBraking.OnWheels(tow * g, behind * g, behind, 0.8, z).Deceleration.Should().BeApproximately(RigBraking.Full(tow, behind, 0.8, z).Deceleration, 1e-9);
    }

    [Property]
    public void The_grade_that_a_force_holds_is_held_by_that_force(int mass, int grade)
    {
        double m = Between(mass, 300, 8000), g = Between(grade, 0, 0.6);
        RigBraking.HeldGrade(RigBraking.Holding(m, g), m).Should().BeApproximately(g, 1e-9);
    }

    [Theory]
    [InlineData(0.5, 0.4680, 0.5727)]
    [InlineData(0.8, 0.6832, 1.1721)]
    public void Adhesion_that_the_axles_ask_for(double rate, double front, double rear)
    {
        AdhesionUse use = AdhesionUse.At(new AxleLoads(10_500, 7500), 2.7, 0.6, 0.65, rate);
        use.Front.Should().BeApproximately(front, 6e-5);
        use.Rear.Should().BeApproximately(rear, 6e-5);
    }

    [Fact]
    public void A_long_descent()
    {
        var rig = new RoadLoad(4900, new Rolling(0.010), 2.6);
        // The reference takes 7 % along the road and leaves the cosine out of rolling.
        const double length = 600 / 0.07;
        DescentEnergy descent = DescentEnergy.Of(rig, new RouteSegment(length, Slope.FromRise(-600, length), 80 / 3.6, 1.1));
        (descent.Height / KilowattHour).Should().BeApproximately(8.009, 0.0006);
        (descent.Rolling / KilowattHour).Should().BeApproximately(1.144, 0.004);
        (descent.Air / KilowattHour).Should().BeApproximately(1.681, 0.0006);
        (descent.Brakes / KilowattHour).Should().BeApproximately(5.183, 0.004);
        descent.Time.Should().BeApproximately(385.7, 0.06);
        (descent.BrakePower / 1000).Should().BeApproximately(48.38, 0.04);
    }

    [Property]
    public void The_height_of_a_descent_goes_somewhere(int grade, int regeneration, int retarder)
    {
        var rig = new RoadLoad(3500, new Rolling(0.010), 2.0);
        var stretch = new RouteSegment(5000, -Between(grade, 0.0, 0.12), 18, 1.15);
        DescentEnergy d = DescentEnergy.Of(rig, stretch, Between(regeneration, 0, 60e3), Between(retarder, 0, 40e3));
        (d.Regenerated + d.Retarded + d.Brakes).Should().BeApproximately(d.ToHold, 1e-3);
        d.Brakes.Should().BeGreaterThanOrEqualTo(0);
        if (d.ToHold > 0)
            (d.Rolling + d.Air + d.ToHold).Should().BeApproximately(d.Height, 1e-3);
    }

    [Theory]
    [InlineData(15, 394.1, 399.7)]
    [InlineData(20, 455.8, 465.7)]
    [InlineData(25, 493.2, 508.8)]
    [InlineData(30, 517.2, 539.6)]
    public void Heavy_trucks_on_six_per_cent_for_four_miles(double speed, double final, double withStop)
    {
        double temperature = GradeSeverity.FinalFahrenheit(80_000, 0.06, 4, speed);
        temperature.Should().BeApproximately(final, 0.06);
        (temperature + GradeSeverity.StopFahrenheit(80_000, speed)).Should().BeApproximately(withStop, 0.11);
    }

    [Theory]
    [InlineData(4900, 0.12, 5725.2)]
    [InlineData(2400, 0.20, 4615.8)]
    [InlineData(4900, 0.18, 8512.7)]
    public void Forces_that_hold_on_a_slope(double mass, double grade, double force) => RigBraking.Holding(mass, grade).Should().BeApproximately(force, 0.06);

    [Property]
    public void Cooled_brakes_stay_below_uncooled_ones_and_settle(int cooling, int time)
    {
        double w = Between(cooling, 0, 200), t = Between(time, 0, 3000);
        double temperature = BrakeHeat.Temperature(300, 290, 20e3, w, 40, t);
        temperature.Should().BeLessThanOrEqualTo(300 + BrakeHeat.Rise(20e3 * t, 40) + 1e-6);
        if (w > 1)
            BrakeHeat.Temperature(300, 290, 20e3, w, 40, 1e6).Should().BeApproximately(290 + (20e3 / w), 1e-3);
    }

    /// <summary>An independent reckoning: a tenth of a second at a time, heat in and heat out.</summary>
    [Property(MaxTest = 20)]
    public void Brakes_warm_and_cool_as_heat_goes_in_and_out(int power, int speed, int mass)
    {
        double p = Between(power, 0, 80e3), v = Between(speed, 3, 30), m = Between(mass, 15, 90), air = 280;
        WarmBrakes down = WarmBrakes.Starting(m, 338.7).After(p * 400, 400, v, air), level = down.After(0, 300, v, air);
        double warm = 338.7, hottest = warm;
        for (int i = 0; i < 7000; i++)
        {
            warm += ((i < 4000 ? p / (m * 480) : 0) - (BrakeHeat.CoolingRate(v) * (warm - air))) * 0.1;
            hottest = Math.Max(hottest, warm);
        }

        level.Temperature.Should().BeApproximately(warm, 0.002 * warm);
        level.Hottest.Should().BeApproximately(hottest, 0.002 * hottest);
        level.Hottest.Should().BeLessThanOrEqualTo(338.7 + BrakeHeat.Rise(p * 400, m) + 1e-6, "the upper bound is that nothing cools");
    }

    [Fact]
    public void Cooling_of_nearly_nothing_is_no_cooling() =>
        BrakeHeat.Temperature(300, 290, 20e3, 1e-8, 40, 600).Should().BeApproximately(BrakeHeat.Temperature(300, 290, 20e3, 0, 40, 600), 1e-3);

    [Fact]
    public void A_grade_steeper_than_the_brakes_has_no_stop()
    {
        StoppingDistance.Of(20, 1, 1.0, -0.15).Should().Be(double.NaN);
        StoppingDistance.Of(-1, 1, 5).Should().Be(double.NaN);
        StoppingDistance.Of(20, 1, double.NaN).Should().Be(double.NaN);
        RigBraking.Full(0, 700, 0.8, 0).Deceleration.Should().Be(double.NaN);
        BrakeHeat.Rise(1e6, 0).Should().Be(double.NaN);
    }
}

using RigLang.Mechanics;

namespace RigLang.Published;

/// <summary>
/// Facts of the trade (common practice) about an electric saloon of 4032 lb, rated for 322 mi, and an aerodynamic trailer of 27 ft and 6000 lb.
/// Assumptions: the saloon's road load is that of the certified battery saloon of 4250 lb test weight with A 37.17 lbf, B 0.0470 lbf/mph, C 0.0144 lbf/mph²;
/// its
/// usable energy follows from the rated range by that car's measured cycles (185.3 and 170.1 MPGe), the label factor 0.7 and a charger of 0.88; with the
/// trailer the drag area is 1.7 m² (one account of tunnel tests: 0.31 on 5.4 m²), rolling 0.010, one driver of 75 kg, sea-level air, calm, level road.
/// </summary>
public sealed class CommonPracticeTests
{
    private const double Mile = 1609.344, Pound = 0.45359237, Speed = 90 / 3.6, Density = 1.225;

    private static BatteryDrive Drive { get; } = new(BatteryDefaults.DriveEfficiency, 0.65, double.PositiveInfinity, 300);

    private static double UsableEnergy
    {
        get
        {
            double label = ConsumptionLabel.Combined(ConsumptionLabel.FromEquivalent(185.3), ConsumptionLabel.FromEquivalent(170.1)) / ConsumptionLabel.BatteryAdjustment;
            return 322 * Mile * label * 0.88;
        }
    }

    private static RoadLoad Solo { get; } = DynamometerRoadLoad.FromCustomary(37.17, 0.0470, 0.0144).ToRoadLoad(4250 * Pound) with { Mass = (4032 * Pound) + 75 };

    private static RoadLoad Towing { get; } = new((4032 * Pound) + 75 + (6000 * Pound), new Rolling(0.010), 1.7);

    private static RouteSegment Pace { get; } = new(1, 0, Speed, Density);

    [Fact]
    public void Miles_and_pounds_are_these_kilometres_and_kilograms()
    {
        (322 * Mile / 1000).Should().BeApproximately(518, 0.5);
        (4032 * Pound).Should().BeApproximately(1829, 0.5);
        (6000 * Pound).Should().BeApproximately(2722, 0.5);
    }

    [Fact]
    public void Two_hours_at_90_are_more_than_100_miles()
    {
        new RouteSegment(180_000, 0, Speed, Density).Time.Should().BeApproximately(2 * 3600, 1e-6);
        (180_000 / Mile).Should().BeGreaterThan(100);
    }

    [Fact]
    public void A_hundred_miles_every_three_hours_make_500_to_600_miles_in_five_to_six_turns()
    {
        // Two hours on the road and one on the charger.
        for (int turns = 5; turns <= 6; turns++)
            (turns * 100).Should().BeInRange(500, 600);
        double driving = new RouteSegment(100 * Mile, 0, Speed, Density).Time;
        (driving + 3600).Should().BeLessThan(3 * 3600, "100 miles at 90 km/h and an hour on the charger fit into three hours");
    }

    [Fact]
    public void An_hour_on_the_charger_puts_back_a_hundred_miles()
    {
        double perHundredMiles = Drive.Over(Towing, Pace with { Length = 100 * Mile }).Battery;
        ChargingCurve curve = ChargingCurve.Through([new(0.5, 120e3), new(1, 10e3)]);
        double after = curve.ChargedAfter(UsableEnergy, 0.10, 3600);
        ((after - 0.10) * UsableEnergy).Should().BeGreaterThan(perHundredMiles * 0.85);
    }

    [Fact]
    public void It_pulls_the_trailer_a_hundred_miles_at_90_and_less_far_than_it_goes_alone()
    {
        double towing = Drive.Range(UsableEnergy, Towing, Pace), solo = Drive.Range(UsableEnergy, Solo, Pace);
        towing.Should().BeGreaterThan(100 * Mile);
        towing.Should().BeLessThan(solo);
        solo.Should().BeInRange(0.9 * 322 * Mile, 1.6 * 322 * Mile, "a steady 90 km/h without hills or heating goes farther than the mixed rating");
    }

    [Theory]
    [InlineData(200e3)]
    [InlineData(330e3)]
    public void Merging_at_full_power_the_range_of_the_moment_is_tens_of_kilometres_and_recovers(double power)
    {
        double merging = Drive.RangeAtPower(UsableEnergy, power, 70 / 3.6);
        merging.Should().BeInRange(10_000, 60_000);
        merging.Should().BeLessThan(0.3 * Drive.Range(UsableEnergy, Towing, Pace));
    }

    /// <summary>
    /// Common practice: 1.8 to 2.5 times the solo consumption at 90 km/h. A sport utility of the certified mean drag area 1.01 m² and a box of 4.2 m² front.
    /// </summary>
    [Fact]
    public void A_tall_trailer_takes_about_twice_the_energy()
    {
        var solo = new RoadLoad(2300, new Rolling(0.010), 1.01);
        var tall = new RoadLoad(2300 + 1600, new Rolling(0.010), DragDefaults.CombinationCoefficient(TrailerBody.Box) * 4.2);
        (Drive.Over(tall, Pace).Battery / Drive.Over(solo, Pace).Battery).Should().BeInRange(1.8, 2.5);
    }
}

using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Quantities;

namespace RigLang.Analysis.Tests.Trips;

public class FuelTests
{
    [Fact]
    public void What_is_stated_of_the_consumption_comes_out_again()
    {
        // Solo as weighed, level, at the stated speed, in the standard's air.
        Study.Rig(Journey.Petrol).Value("level-fuel").Should().BeApproximately(5.4e-8, 1e-12);
        Journey.Leg("distance 100 km\nclimb 0 m\nwind 0 km/h head", Journey.Petrol).Value("fuel-used").Should().BeApproximately(5.4e-3, 1e-5);
    }

    [Fact]
    public void A_trailer_takes_more_than_the_stated_consumption()
    {
        var rig = Journey.Petrol.Replace("rig r", "trailer t\n    mass 500 kg\n    rolling 0.012\n    drag-area 0.4 m²\n    aboard nothing\n\nrig r\n    trailer t", StringComparison.Ordinal);

        Study.Rig(rig).Value("level-fuel").Should().BeGreaterThan(1.2 * 5.4e-8);
    }

    /// <summary>Typical best points (value from memory): diesel 195 to 220 g/kWh, which is 40 % or so.</summary>
    [Fact]
    public void An_engine_of_which_nothing_is_stated_is_a_typical_one_and_marked()
    {
        var rig = Study.Rig(Journey.Petrol.Replace("        consumption 5.4 L/100km\n        consumption-speed 90 km/h\n", "", StringComparison.Ordinal));

        (rig.Value("level-fuel") * 1e8).Should().BeInRange(3.5, 6.5);
        rig.Result("level-fuel").IsEstimated.Should().BeTrue();
        Study.Rig(Journey.Petrol).Result("level-fuel").IsEstimated.Should().BeFalse();
    }

    [Theory]
    [InlineData("100 %", 40)]
    [InlineData("24 L", 24)]
    [InlineData("60 %", 24)]
    [InlineData("5 us-gal", 18.927)]
    public void The_tank_starts_with_what_is_written(string level, double litres)
    {
        var leg = Journey.Of(Journey.Petrol, $"start-fuel {level}\nleg a\n    distance 100 km\n    climb 0 m\n    wind 0 km/h head").Legs[0];

        (leg.Value("fuel-left") * 1000).Should().BeApproximately(litres - 5.4, 0.01);
        leg.Value("energy-left").Should().BeApproximately((litres - 5.4) / 40, 1e-3);
        leg.Result("energy-used").Applies.Should().BeFalse();
    }

    [Theory]
    [InlineData("refuel-to 100 %", 40)]
    [InlineData("refuel-to 30 L", 30)]
    [InlineData("refuel-to 10 L", 14.6)]
    [InlineData("pause 10 min", 14.6)]
    public void A_stop_fills_up_to_the_mark(string lines, double litres)
    {
        var trip = Journey.Of(Journey.Petrol, $"start-fuel 20 L\nleg a\n    distance 100 km\n    climb 0 m\n    wind 0 km/h head\nstop a\n    {lines}\n    price 1.80 EUR/L");
        var stop = trip.Legs[0].Stop!;

        (stop.Value("leaving-with") * 40).Should().BeApproximately(litres, 0.01);
        if (lines.StartsWith("refuel", StringComparison.Ordinal))
        {
            (stop.Value("fuel-taken") * 1000).Should().BeApproximately(litres - 14.6, 0.01);
            stop.Value("stop-cost").Should().BeApproximately((litres - 14.6) * 1.80, 0.02);
        }
        else
        {
            stop.Result("stop-cost").Applies.Should().BeFalse();
        }
    }

    [Theory]
    [InlineData("reserve 20 %", (14.6 / 40) - 0.20)]
    [InlineData("reserve 8 L", (14.6 - 8) / 40)]
    [InlineData("reserve 100 km", (14.6 - 5.4) / 40)]
    public void A_reserve_is_a_share_a_volume_or_a_distance_at_the_leg_s_pace(string reserve, double room) =>
        Journey.Of(Journey.Petrol, $"start-fuel 20 L\n{reserve}\nleg a\n    distance 100 km\n    climb 0 m\n    wind 0 km/h head").Legs[0].Value("reserve-room").Should().BeApproximately(room, 1e-3);

    [Fact]
    public void Tanks_with_the_engine_s_fuel_add_up_and_others_are_left_out()
    {
        var rig = Journey.Petrol.Replace("tank fuel", "tank spare 20 L petrol at 3 m behind front-axle\n    tank water 30 L water at 2 m behind front-axle\n    tank fuel", StringComparison.Ordinal);

        Study.Rig(rig).Value("level-range").Should().BeApproximately(60 / 5.4 * 100_000, 100);
    }

    [Fact]
    public void Prices_in_one_currency_add_up_and_in_several_do_not()
    {
        TripStudy Trip(string second) => Journey.Of(Journey.Petrol, $"""
            start-fuel 20 L
            leg a
                distance 100 km
                climb 0 m
                wind 0 km/h head
            stop a
                refuel-to 20 L
                price 1.80 EUR/L
            leg b
                distance 100 km
                climb 0 m
                wind 0 km/h head
            stop b
                refuel-to 20 L
                price {second}
            """);

        var one = Trip("2.00 EUR/L");
        one.Value("total-cost").Should().BeApproximately(5.4 * 3.8, 0.02);
        TripResults.TotalCost.Write(one, one.Value("total-cost"), DisplaySystem.Metric).Should().Be("20.52 EUR");
        var several = Trip("7 PLN/L");
        several.Result("total-cost").Applies.Should().BeFalse("nothing is ever converted");
        Costs.OfTrip(several).Select(cost => cost.Currency).Should().Equal("EUR", "PLN");
    }
}

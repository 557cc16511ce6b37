using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using RigLang.Analysis.Studies;

namespace RigLang.Analysis.Tests.Trips;

public class LegEnergyTests
{
    private const double Gravity = 9.80665;
    private const string Calm = "speed 90 km/h\nwind 0 km/h head\n" + Journey.ThinAir;

    /// <summary>Computed by two independent formulations: 4900 kg, rolling 0.010, 2.6 m², air 1.2 kg/m³, 90 km/h, drive 88 %, 1.5 kW: 476.11 Wh/km.</summary>
    [Fact]
    public void A_level_leg_takes_the_reference_energy()
    {
        var leg = Journey.Leg($"distance 100 km\nclimb 0 m\n{Calm}");

        leg.KilowattHours("energy-used").Should().BeApproximately(47.611, 0.001);
        (leg.Value("energy-per-distance") / 3.6).Should().BeApproximately(476.11, 0.01);
        leg.Value("energy-left").Should().BeApproximately(1 - (47.611 / 80), 1e-5);
        leg.Value("range-left").Should().BeApproximately(1000 * (80 - 47.611) / 0.47611, 10);
        leg.Result("energy-used").IsEstimated.Should().BeTrue("its altitude is the sea's only because nobody says another");
    }

    [Fact]
    public void With_everything_said_nothing_is_estimated()
    {
        var leg = Journey.Leg($"distance 100 km\nclimb 0 m\naltitude 0 m\n{Calm}");

        leg.Result("energy-used").IsEstimated.Should().BeFalse();
        leg.Result("energy-left").IsEstimated.Should().BeFalse();
    }

    /// <summary>The same reference: 500 m of climb cost 7.584 kWh more.</summary>
    [Theory]
    [InlineData("distance 100 km\nclimb 500 m\ndescent 0 m")]
    [InlineData("section 45 km at 0 %\nsection 10 km at 5.0062617 %\nsection 45 km at 0 %")]
    public void Climbing_costs_the_lifting_over_the_drive(string way)
    {
        // In the air of the middle height, so that only the lifting differs; on the hills the rolling is less by their cosine.
        var level = Journey.Leg("distance 100 km\nclimb 0 m\naltitude 0 m\nair 18.375 °C\nwind 0 km/h head").KilowattHours("energy-used");
        var leg = Journey.Leg($"{way}\naltitude -250 m\nair 20 °C\nwind 0 km/h head");

        (leg.KilowattHours("energy-used") - level).Should().BeApproximately(7.584, 0.01);
        leg.Value("leg-climb").Should().BeApproximately(500, 0.01);
    }

    /// <summary>What is held back on a steep descent returns by regeneration: 0.65 of it (the reference's 500 m returns 4.338 kWh).</summary>
    [Fact]
    public void A_steep_descent_gives_back_its_share()
    {
        var leg = Journey.Of(Journey.Electric, $"start-charge 50 %\nleg a\n    section 2.5 km at -20.412415 %\n    altitude 250 m\n    {Calm.Replace("\n", "\n    ", StringComparison.Ordinal)}").Legs[0];

        var lifted = 4900 * Gravity * 500;
        var level = Journey.Leg($"section 2.5 km at 0 %\n{Calm}");
        var rollingAndAir = (level.Value("energy-used") - (1500 * 100)) * 0.88;
        (leg.Value("energy-used") - (1500 * 100)).Should().BeApproximately(-0.65 * (lifted - rollingAndAir), 0.01 * lifted);
        (0.65 * lifted / 3.6e6).Should().BeApproximately(4.338, 0.001);
    }

    [Fact]
    public void The_sum_over_the_legs_is_the_trip_and_what_is_left_follows_from_it()
    {
        var trip = Journey.Of(Journey.Electric, """
            start-charge 90 %
            leg a
                distance 40 km
                climb 300 m
                descent 120 m
            leg b
                section 20 km at 1 %
                section 5 km at -6 %
            stop b
                pause 20 min
            leg c
                distance 30 km
                climb 0 m
            """);

        trip.Value("total-energy").Should().BeApproximately(trip.Legs.Sum(leg => leg.Value("energy-used")), 1e-6);
        trip.Value("total-distance").Should().BeApproximately(95_000, 1e-6);
        trip.Legs[^1].Value("energy-left").Should().BeApproximately(0.9 - (trip.Value("total-energy") / (80 * 3.6e6)), 1e-9);
        trip.Value("least-left").Should().BeApproximately(trip.Legs[^1].Value("energy-left"), 1e-9);
        trip.Value("driving-time").Should().BeApproximately(trip.Legs.Sum(leg => leg.Value("leg-time")), 1e-6);
        trip.Value("total-time").Should().BeApproximately(trip.Value("driving-time") + 1200, 1e-6);
        trip.Value("standing-time").Should().BeApproximately(1200, 1e-6);
    }

    [Property(MaxTest = 30)]
    public Property A_leg_cut_in_two_takes_the_same() => Prop.ForAll(
        Gen.Choose(5, 95).ToArbitrary(), Gen.Choose(0, 800).ToArbitrary(), Gen.Choose(0, 800).ToArbitrary(),
        (percent, climb, descent) =>
        {
            var share = percent / 100.0;
            string Part(double part) => FormattableString.Invariant($"distance {120 * part:0.######} km\n    climb {climb * part:0.######} m\n    descent {descent * part:0.######} m\n    wind 10 km/h left");
            var whole = Journey.Leg(Part(1).Replace("    ", "", StringComparison.Ordinal));
            var cut = Journey.Of(Journey.Electric, $"start-charge 100 %\nleg a\n    {Part(share)}\nleg b\n    {Part(1 - share)}");
            return Math.Abs(cut.Value("total-energy") - whole.Value("energy-used")) < 0.0001 * whole.Value("energy-used");
        });

    [Property(MaxTest = 30)]
    public Property Sections_cut_in_two_take_the_same() => Prop.ForAll(
        Gen.Choose(5, 95).ToArbitrary(), Gen.Choose(-60, 60).ToArbitrary(),
        (percent, grade) =>
        {
            string Section(double km) => FormattableString.Invariant($"section {km:0.######} km at {grade / 10.0:0.0} %");
            var whole = Journey.Leg($"{Section(20)}\n{Calm}\naltitude 1500 m");
            var cut = Journey.Leg($"{Section(20 * percent / 100.0)}\n{Section(20 - (20 * percent / 100.0))}\n{Calm}\naltitude 1500 m");
            // A section counts with the air at its middle: where driving just turns into regenerating, two middles lie on both sides of the turn.
            var level = Journey.Leg($"section 20 km at 0 %\n{Calm}\naltitude 1500 m").Value("energy-used");
            return Math.Abs(cut.Value("energy-used") - whole.Value("energy-used")) < (0.001 * Math.Abs(whole.Value("energy-used"))) + (0.003 * level);
        });

    [Property(MaxTest = 30)]
    public Property Faster_takes_more() => Prop.ForAll(
        Gen.Choose(60, 120).ToArbitrary(), Gen.Choose(1, 20).ToArbitrary(),
        (speed, more) => Energy($"speed {speed + more} km/h\nwind 0 km/h head") > Energy($"speed {speed} km/h\nwind 0 km/h head"));

    [Fact]
    public void Wind_from_ahead_costs_and_wind_from_behind_saves()
    {
        double With(string wind) => Energy($"speed 90 km/h\nwind {wind}");

        With("20 km/h head").Should().BeGreaterThan(With("20 km/h left"));
        With("20 km/h left").Should().BeGreaterThan(With("0 km/h head"));
        With("0 km/h head").Should().BeGreaterThan(With("20 km/h tail"));
        With("20 km/h left").Should().BeApproximately(With("20 km/h right"), 1e-6);
        With("40 km/h head").Should().BeGreaterThan(With("20 km/h head"));
    }

    [Theory]
    [InlineData("225°", "225°", "head")]
    [InlineData("45°", "225°", "tail")]
    [InlineData("135°", "225°", "left")]
    [InlineData("315°", "225°", "right")]
    public void A_bearing_and_a_heading_make_a_side(string from, string heading, string side) =>
        Energy($"wind 20 km/h from {from}\nheading {heading}").Should().BeApproximately(Energy($"wind 20 km/h {side}"), 1);

    [Fact]
    public void A_wind_from_a_bearing_needs_the_heading() =>
        Journey.Leg("distance 100 km\nclimb 0 m\nwind 20 km/h from 225°").Result("energy-used").Missing!.Words.Should().Be("`heading` of leg a, trip p");

    [Fact]
    public void No_wind_written_is_calm_and_marked()
    {
        var leg = Journey.Leg($"distance 100 km\nclimb 0 m\naltitude 0 m\n{Journey.ThinAir}");

        leg.Value("energy-used").Should().BeApproximately(Energy($"wind 0 km/h head\n{Journey.ThinAir}"), 1e-6);
        leg.Result("energy-used").IsEstimated.Should().BeTrue();
        leg.Result("leg-time").IsEstimated.Should().BeFalse("time rests on no wind while power is plenty");
    }

    [Fact]
    public void Thin_warm_air_holds_back_less()
    {
        Energy("altitude 1500 m\nair 10 °C").Should().BeLessThan(Energy("altitude 0 m\nair 10 °C"));
        Energy("altitude 0 m\nair 30 °C").Should().BeLessThan(Energy("altitude 0 m\nair 0 °C"));
    }

    [Fact]
    public void The_altitude_goes_on_from_leg_to_leg()
    {
        var trip = Journey.Of(Journey.Electric, """
            start-charge 90 %
            leg a
                distance 40 km
                climb 900 m
                descent 100 m
                altitude 300 m
                air 15 °C
                wind 0 km/h head
            leg b
                distance 10 km
                climb 0 m
                air 15 °C
                wind 0 km/h head
            leg c
                distance 10 km
                climb 0 m
                altitude 1100 m
                air 15 °C
                wind 0 km/h head
            """);

        trip.Legs[1].Value("energy-used").Should().BeApproximately(trip.Legs[2].Value("energy-used"), 1e-6);
        trip.Legs[1].Result("energy-used").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void Auxiliary_power_follows_the_cold_where_it_is_not_said()
    {
        string rig = Journey.Electric.Replace("        auxiliary 1.5 kW\n", "", StringComparison.Ordinal);
        double At(int celsius) => Journey.Leg($"distance 100 km\nclimb 0 m\nair {celsius} °C\nwind 0 km/h head", rig).Value("energy-used");
        double Air(int celsius) => Energy($"air {celsius} °C\nwind 0 km/h head");

        // 250 W from 18 to 24 °C, 140 W for each kelvin below (our estimate): at −2 °C 3050 W over 4000 s.
        (At(20) - Air(20)).Should().BeApproximately((250 - 1500) * 4000, 1);
        (At(-2) - Air(-2)).Should().BeApproximately((3050 - 1500) * 4000, 1);
    }

    [Fact]
    public void The_lower_of_wish_and_limit_counts_and_the_rig_s_speed_stands_in()
    {
        LegSubject Leg(string lines) => Journey.Leg($"distance 90 km\nclimb 0 m\n{lines}");

        Leg("speed 100 km/h\nspeed-limit 80 km/h").Value("leg-speed").Should().BeApproximately(80 / 3.6, 1e-9);
        Leg("speed 70 km/h\nspeed-limit 80 km/h").Value("leg-speed").Should().BeApproximately(70 / 3.6, 1e-9);
        Leg("").Value("leg-speed").Should().BeApproximately(90 / 3.6, 1e-9);
        Leg("").Result("leg-speed").IsEstimated.Should().BeFalse();
        Leg("speed ? for energy-left = 30 %").Value("leg-speed").Should().BeApproximately(90 / 3.6, 1e-9);
        Leg("speed ? for energy-left = 30 %").Result("leg-speed").IsEstimated.Should().BeTrue();
        Leg("delay 15 min").Value("leg-time").Should().BeApproximately(4500, 1e-6);
        Leg("delay 15 min").Value("leg-speed").Should().BeApproximately(90 / 3.6, 1e-9);
    }

    [Fact]
    public void A_section_s_own_speed_counts_there()
    {
        var leg = Journey.Leg("section 30 km at 0 %\nsection 10 km at 0 % speed 60 km/h\nsection 10 km at 0 % speed 120 km/h\nspeed-limit 100 km/h");

        leg.Value("leg-time").Should().BeApproximately(1200 + 600 + 360, 1e-6);
        leg.Value("leg-distance").Should().BeApproximately(50_000, 1e-6);
    }

    [Fact]
    public void Without_hills_the_time_is_known_and_the_energy_is_asked_for()
    {
        var leg = Journey.Leg("distance 90 km");

        leg.Value("leg-time").Should().BeApproximately(3600, 1e-6);
        leg.Value("arrival").Should().BeApproximately(3600, 1e-6);
        leg.Result("energy-used").Missing!.Words.Should().Be("`climb` of leg a, trip p");
        Journey.Leg("distance 90 km\nclimb 100 m").Result("energy-left").Missing!.Words.Should().Be("`descent` of leg a, trip p");
    }

    [Fact]
    public void Where_power_runs_out_the_rig_goes_as_fast_as_it_lets()
    {
        var rig = Journey.Electric.Replace("        motor-power-lasting 250 kW\n", "", StringComparison.Ordinal).Replace("motor-power 300 kW", "motor-power 60 kW", StringComparison.Ordinal);
        var leg = Journey.Leg($"section 10 km at 6 %\naltitude 0 m\n{Calm}", rig);
        var speed = leg.Value("leg-speed");

        speed.Should().BeLessThan(90 / 3.6);
        // The work at the wheels over the time is the motors' power less the gearbox.
        var wheels = (leg.Value("energy-used") - (1500 * leg.Value("leg-time"))) * 0.88;
        (wheels / leg.Value("leg-time")).Should().BeApproximately(60_000 * 0.98, 50);
        leg.Result("leg-time").IsEstimated.Should().BeTrue("nobody says how long the motors hold their peak");
    }

    [Fact]
    public void Thin_air_takes_from_an_engine_s_power()
    {
        double At(string altitude, string aspiration) => Journey.Leg(
            $"section 5 km at 12 %\nspeed 90 km/h\naltitude {altitude}\nair 10 °C\nwind 0 km/h head",
            Journey.Petrol.Replace("        fuel petrol\n", $"        fuel petrol\n        aspiration {aspiration}\n", StringComparison.Ordinal)
                .Replace("engine-power 70 kW", "engine-power 45 kW", StringComparison.Ordinal)).Value("leg-speed");

        At("2000 m", "natural").Should().BeLessThan(At("0 m", "natural"));
        At("2000 m", "turbo").Should().BeGreaterThan(At("2000 m", "natural"));
    }

    [Fact]
    public void A_full_battery_takes_nothing_back()
    {
        var trip = Journey.Of(Journey.Electric, """
            start-charge 99 %
            leg down
                section 10 km at -8 %
                section 5 km at 0 %
            """);
        var leg = trip.Legs[0];

        // Room for 0.8 kWh, then nothing more goes in: from full at the foot of the hill the level is taken.
        var level = Journey.Leg("section 5 km at 0 %\naltitude -800 m\nair 20 °C").Value("energy-used");
        leg.Value("energy-left").Should().BeApproximately(1 - (level / (80 * 3.6e6)), 0.002);
        leg.Value("energy-used").Should().BeApproximately((0.99 - leg.Value("energy-left")) * 80 * 3.6e6, 1e-3, "what is refused isn't used");
    }

    [Fact]
    public void On_a_pass_the_least_is_at_the_top()
    {
        var trip = Journey.Of(Journey.Electric, """
            start-charge 50 %
            leg over
                section 10 km at 8 %
                section 10 km at -8 %
            """);

        trip.Legs[0].Value("lowest-left").Should().BeLessThan(trip.Legs[0].Value("energy-left"));
        trip.Value("least-left").Should().BeApproximately(trip.Legs[0].Value("lowest-left"), 1e-12);
        Journey.Leg("distance 20 km\nclimb 800 m\ndescent 800 m").Result("lowest-left").Applies.Should().BeFalse("nobody knows where the hills are");
    }

    private static double Energy(string lines) => Journey.Leg($"distance 100 km\nclimb 0 m\n{lines}").Value("energy-used");
}

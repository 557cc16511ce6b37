using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using RigLang.Analysis.Studies;

namespace RigLang.Analysis.Tests.Trips;

/// <summary>Where the height of a descent goes, through the language; worked out by hand beside.</summary>
public class DescentTests
{
    private const double Gravity = 9.80665;
    private const string Air = "altitude 500 m\nair 20 °C\nwind 0 km/h head";

    private static string Braked(string brakes) => Journey.Electric.Replace("    mass 2400 kg\n", "    mass 2400 kg\n    gross-rating 3000 kg\n", StringComparison.Ordinal)
        .Replace("trailer t\n    mass 2500 kg\n    aboard nothing", $"trailer t\n    mass 2500 kg\n    gross-rating 2500 kg\n    brakes {brakes}\n    aboard nothing", StringComparison.Ordinal);

    private static LegSubject Down(string rig, string charge = "50 %", string grade = "-7 %", string more = "") =>
        Journey.Of(rig, $"start-charge {charge}\nleg a\n    section 8 km at {grade} speed 80 km/h\n    {Air.Replace("\n", "\n    ", StringComparison.Ordinal)}{more}").Legs[0];

    /// <summary>The reference's train: 4900 kg, rolling 0.010, 2.6 m².</summary>
    [Fact]
    public void What_is_held_back_is_height_less_rolling_and_air()
    {
        var leg = Down(Braked("electric"));
        var (sine, cosine) = (0.07 / Math.Sqrt(1.0049), 1 / Math.Sqrt(1.0049));
        var middle = 500 - (8000 * sine / 2);
        var density = 101325 * Math.Pow(1 - (0.0065 * middle / 288.15), 5.255880) / (287.05287 * (293.15 + (0.0065 * (500 - middle))));
        var held = 8000 * ((4900 * Gravity * (sine - (0.010 * cosine))) - (0.5 * density * 2.6 * Math.Pow(80 / 3.6, 2)));

        leg.Value("held-back").Should().BeApproximately(held, 0.001 * held);
        leg.Value("energy-regained").Should().BeApproximately(0.65 * held, 0.001 * held, "the battery takes 500 kW and is half empty");
        leg.Value("brake-heat").Should().BeApproximately(0, 1);
        leg.Result("overrun-held").Applies.Should().BeFalse();
    }

    [Property(MaxTest = 25)]
    public Property All_of_it_goes_somewhere() => Prop.ForAll(
        Gen.Choose(0, 130).ToArbitrary(), Gen.Choose(10, 100).ToArbitrary(), Gen.Elements("electric", "overrun", "none").ToArbitrary(),
        (grade, charge, brakes) =>
        {
            var leg = Down(Braked(brakes), $"{charge} %", FormattableString.Invariant($"-{grade / 10.0:0.0} %"));
            var held = leg.Value("held-back");
            var regained = held == 0 ? 0 : leg.Value("energy-regained");
            var used = leg.Value("energy-used");
            return Math.Abs(held - leg.Value("brake-heat") - (regained / 0.65)) < 1 + (1e-9 * held)
                && Math.Abs(leg.Value("energy-left") - (charge / 100.0) + (used / (80 * 3.6e6))) < 1e-9;
        });

    [Fact]
    public void A_full_battery_leaves_it_to_the_brakes()
    {
        var (full, half) = (Down(Braked("electric"), "100 %"), Down(Braked("electric")));

        full.Value("energy-regained").Should().BeApproximately(1500 * 360, 1, "what heating and electronics use is all it takes");
        full.Value("energy-refused").Should().BeApproximately(half.Value("energy-regained") - full.Value("energy-regained"), 1);
        full.Value("brake-heat").Should().BeApproximately(full.Value("held-back") - (1500 * 360 / 0.65), 1);
        full.Value("brake-temperature").Should().BeGreaterThan(half.Value("brake-temperature"));
    }

    /// <summary>Near full the battery takes no more than a post could give it: here 30 kW at full, 54 kW at 90 %.</summary>
    [Fact]
    public void Near_full_the_charging_curve_limits_what_comes_back()
    {
        var leg = Down(Braked("electric"), "85 %", "-17 %");
        var wanted = Down(Braked("electric"), "30 %", "-17 %").Value("energy-regained");

        leg.Value("energy-regained").Should().BeLessThan(wanted);
        // From 85 % on: 150 − 240 (s − 0.5) kW less what is used meanwhile; its closed form over 360 s.
        var (slope, power, capacity) = (240e3, 66e3, 80 * 3.6e6);
        var rise = power / slope * (1 - Math.Exp(-slope * 360 / capacity));
        leg.Value("energy-left").Should().BeApproximately(0.85 + rise, 1e-6);
    }

    [Fact]
    public void An_overrun_trailer_keeps_energy_from_the_battery()
    {
        var (overrun, electric) = (Down(Braked("overrun")), Down(Braked("electric")));
        var held = overrun.Value("held-back");
        var weight = 2500 * Gravity;
        var taken = 8000 * 7 / 8.0 * ((2500 / 4900.0 * held / 8000) - (0.03 * weight));

        overrun.Value("overrun-held").Should().BeApproximately(taken, 0.001 * taken);
        overrun.Value("brake-heat").Should().BeApproximately(taken, 0.001 * taken);
        overrun.Value("energy-regained").Should().BeApproximately(0.65 * (held - taken), 0.001 * held);
        overrun.Value("energy-left").Should().BeLessThan(electric.Value("energy-left"));
        overrun.Value("trailer-brake-temperature").Should().BeGreaterThan(overrun.Value("brake-temperature"));
    }

    [Fact]
    public void An_engine_holds_what_its_drag_can()
    {
        string Rig(string line) => Journey.Petrol.Replace("    mass 1300 kg\n", "    mass 1300 kg\n    gross-rating 1800 kg\n", StringComparison.Ordinal)
            .Replace("        engine-power 70 kW\n", $"        engine-power 70 kW\n{line}", StringComparison.Ordinal);
        LegSubject Leg(string line) => Journey.Of(Rig(line), $"start-fuel 50 %\nleg a\n    section 6 km at -10 % speed 60 km/h\n    altitude 0 m\n    air 20 °C\n    wind 0 km/h head").Legs[0];

        var written = Leg("        retarding-power 9 kW\n");
        written.Value("engine-held").Should().BeApproximately(9000 * 360, 1);
        written.Value("brake-heat").Should().BeApproximately(written.Value("held-back") - (9000 * 360), 1);
        written.Result("brake-heat").IsEstimated.Should().BeFalse();
        var estimated = Leg("");
        estimated.Value("engine-held").Should().BeApproximately(7000 * 360, 1, "a tenth of its power (our choice)");
        estimated.Result("brake-heat").IsEstimated.Should().BeTrue();
        estimated.Result("energy-regained").Applies.Should().BeFalse();
    }

    /// <summary>One long descent: 8 km at 80 km/h, its heat into brakes of known mass that cool twice as fast as heavy drums.</summary>
    [Fact]
    public void Brakes_get_as_warm_as_their_mass_lets_them()
    {
        var rig = Braked("none").Replace("    gross-rating 3000 kg\n", "    gross-rating 3000 kg\n    brake-mass 40 kg\n", StringComparison.Ordinal);
        var leg = Down(rig, "100 %");
        var (heat, rate) = (leg.Value("brake-heat"), 2 * (1.23 + (0.0256 * 80 / 1.609344)) / 3600);
        double warm = 338.7, air = 293.15 + (0.0065 * 4000 * 0.07 / Math.Sqrt(1.0049));
        for (var i = 0; i < 36_000; i++)
        {
            warm += ((heat / 360 / (40 * 480)) - (rate * (warm - air))) * 0.01;
        }

        leg.Value("brake-temperature").Should().BeApproximately(warm, 0.2);
        leg.Result("trailer-brake-temperature").Applies.Should().BeFalse();
    }

    [Fact]
    public void Brakes_stay_warm_into_the_next_leg_and_cool_at_a_stop()
    {
        string Two(string stop) => $"start-charge 100 %\nleg a\n    section 8 km at -8 % speed 80 km/h\n{stop}leg b\n    section 1 km at -8 % speed 80 km/h";
        var rig = Braked("electric");
        double Second(string stop) => Journey.Of(rig, Two(stop)).Legs[1].Value("brake-temperature");

        Second("").Should().BeGreaterThan(Second("stop a\n    pause 20 min\n"));
        Second("stop a\n    pause 20 min\n").Should().BeGreaterThan(Second("stop a\n    pause 3 h\n"));
    }

    [Fact]
    public void Where_the_hills_lie_is_unknown_no_temperature_is_told()
    {
        var leg = Journey.Of(Braked("electric"), "start-charge 50 %\nleg a\n    distance 20 km\n    climb 0 m\n    descent 900 m").Legs[0];

        leg.Result("brake-temperature").Applies.Should().BeFalse();
        leg.Value("held-back").Should().BePositive();
    }

    [Fact]
    public void A_level_leg_holds_nothing_back()
    {
        var leg = Journey.Leg("distance 20 km\nclimb 0 m");

        leg.Value("held-back").Should().Be(0);
        leg.Value("brake-heat").Should().Be(0);
        leg.Result("energy-regained").Applies.Should().BeFalse();
    }
}

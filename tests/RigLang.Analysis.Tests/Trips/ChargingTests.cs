using RigLang.Analysis.Studies;

namespace RigLang.Analysis.Tests.Trips;

public class ChargingTests
{
    /// <summary>
    /// Computed in closed form: 80 kWh, 150 kW to half charged, then straight to 30 kW at full. Minutes from 10 %: to 80 % 25.8785, to 90 % 33.2330, to 50 % 12.8000; a site
    /// of 75 kW to 80 % 44.8000; a site of 50 kW to 80 % 67.2000.
    /// </summary>
    [Theory]
    [InlineData("150 kW dc", 50, 12.8000)]
    [InlineData("150 kW dc", 80, 25.8785)]
    [InlineData("350 kW dc", 80, 25.8785)]
    [InlineData("150 kW dc", 90, 33.2330)]
    [InlineData("75 kW dc", 80, 44.8000)]
    [InlineData("50 kW dc", 80, 67.2000)]
    public void Time_follows_the_battery_s_curve_under_the_post(string charger, int to, double minutes)
    {
        var stop = Stop($"charger {charger}\ncharge-to {to} %", startCharge: "10 %");

        (stop.Value("charge-time") / 60).Should().BeApproximately(minutes, 0.002);
        stop.KilowattHours("energy-charged").Should().BeApproximately(80 * (to - 10) / 100.0, 0.001);
        stop.Value("leaving-with").Should().BeApproximately(to / 100.0, 1e-12);
        stop.Result("charge-time").IsEstimated.Should().Be(stop.Leg.Result("energy-left").IsEstimated, "the curve itself is all written");
    }

    [Theory]
    [InlineData("11 kW ac", 11.0)]
    [InlineData("22 kW ac", 11.0)]
    [InlineData("3.6 kW ac", 3.6)]
    public void On_alternating_current_the_weaker_of_post_and_charger_aboard_counts(string charger, double power) =>
        (Stop($"charger {charger}\ncharge-to 60 %", startCharge: "20 %").Value("charge-time") / 3600).Should().BeApproximately(32 / power, 0.01);

    [Fact]
    public void A_post_that_limits_its_current_gives_what_the_voltage_lets_it()
    {
        string Rig(string voltage) => Journey.Electric.Replace("ac-power 11 kW", $"ac-power 11 kW\n        battery-voltage {voltage}", StringComparison.Ordinal);

        // 100 A at 400 V half charged, 360 V empty, 440 V full: the mean over 40 % to 60 % is 40 kW.
        (Stop("charger 150 kW dc\ncharger-current 100 A\ncharge-to 60 %", "40 %", Rig("400 V")).Value("charge-time") / 3600).Should().BeApproximately(16 / 40.0, 0.001);
        Stop("charger 150 kW dc\ncharger-current 100 A\ncharge-to 60 %", "40 %", Rig("800 V")).Value("charge-time").Should().BeApproximately(3600 * 16 / 80.0, 5);
        Stop("charger 150 kW dc\ncharger-current 100 A\ncharge-to 60 %", "40 %").Result("charge-time").IsEstimated.Should().BeTrue("no line says the voltage");
    }

    [Fact]
    public void What_is_lost_at_the_post_takes_time_and_is_paid_for()
    {
        var rig = Journey.Electric.Replace("charge-efficiency 100 %", "charge-efficiency 80 %", StringComparison.Ordinal);
        var stop = Stop("charger 50 kW dc\ncharge-to 60 %\nprice 0.50 EUR/kWh", "20 %", rig);

        (stop.Value("charge-time") / 3600).Should().BeApproximately(32 / 40.0, 0.001);
        stop.KilowattHours("energy-bought").Should().BeApproximately(40, 0.01);
        stop.Value("stop-cost").Should().BeApproximately(20, 0.01);
    }

    [Fact]
    public void Beyond_the_last_point_the_power_falls_and_the_time_is_marked()
    {
        var rig = Journey.Electric.Replace("        charge-point 100 % 30 kW\n", "        charge-point 80 % 50 kW\n", StringComparison.Ordinal).Replace("        charge-point 0 % 150 kW\n", "", StringComparison.Ordinal);

        double Minutes(string to) => Stop($"charger 150 kW dc\ncharge-to {to}", "55 %", rig).Value("charge-time") / 60;
        // 50 kW at 80 %, a tenth of 150 kW at full (our choice): 80·0.2/35·60·ln(50/15) minutes for the last fifth.
        (Minutes("100 %") - Minutes("80 %")).Should().BeApproximately(80 * 0.2 / 35 * 60 * Math.Log(50 / 15.0), 0.01);
        Stop("charger 150 kW dc\ncharge-to 100 %", "55 %", rig).Result("charge-time").IsEstimated.Should().BeTrue();
    }

    [Fact]
    public void Without_a_curve_a_direct_current_post_waits_for_one_and_so_do_the_clocks_behind_it()
    {
        var rig = string.Join('\n', Journey.Electric.Split('\n').Where(line => !line.Contains("charge-point", StringComparison.Ordinal)));
        var stop = Stop("charger 150 kW dc\ncharge-to 80 %", "20 %", rig);

        stop.Result("charge-time").Missing!.Words.Should().StartWith("`charge-point` of electric");
        stop.Result("departure").Missing.Should().NotBeNull("an unknown time must not be counted as none");
        Stop("charger 11 kW ac\ncharge-to 80 %", "20 %", rig).Value("charge-time").Should().BeGreaterThan(0);
    }

    [Fact]
    public void A_stop_without_its_mark_asks_for_it() =>
        Stop("charger 150 kW dc", "20 %").Result("charge-time").Missing!.Words.Should().Be("`charge-to` of stop a, trip p");

    [Fact]
    public void Nothing_to_charge_takes_no_time_and_no_plugging_in()
    {
        var stop = Stop("charger 150 kW dc\ncharge-to 30 %\nconnect 6 min\npause 2 min", "60 %");

        stop.Value("charge-time").Should().Be(0);
        stop.Value("stop-time").Should().BeApproximately(120, 1e-6);
        stop.Value("leaving-with").Should().BeGreaterThan(0.59);
    }

    [Theory]
    [InlineData("connect 6 min", 360)]
    [InlineData("connect 6 min\nuncouple 12 min", 360 + 720)]
    [InlineData("", 300)]
    public void Plugging_in_and_uncoupling_come_on_top(string lines, double extra)
    {
        var stop = Stop($"charger 150 kW dc\ncharge-to 80 %\n{lines}".TrimEnd(), "20 %");

        stop.Value("stop-time").Should().BeApproximately(stop.Value("charge-time") + extra, 1e-6);
    }

    [Fact]
    public void A_longer_pause_wins() =>
        Stop("charger 150 kW dc\ncharge-to 80 %\npause 3 h", "20 %").Value("stop-time").Should().BeApproximately(3 * 3600, 1e-6);

    [Fact]
    public void A_battery_that_arrived_flat_is_charged_from_empty()
    {
        var trip = Journey.Of(Journey.Electric, """
            start-charge 10 %
            leg a
                distance 100 km
                climb 0 m
            stop a
                charger 150 kW dc
                charge-to 50 %
            """);

        trip.Legs[0].Value("energy-left").Should().BeLessThan(0, "how much was short is worth knowing");
        trip.Legs[0].Stop!.KilowattHours("energy-charged").Should().BeApproximately(40, 1e-6);
    }

    /// <summary>A stop behind a metre of road, so that it is reached with what the trip starts with.</summary>
    private static StopSubject Stop(string lines, string startCharge, string rig = Journey.Electric) =>
        Journey.Of(rig, $"start-charge {startCharge}\nleg a\n    distance 1 m\n    climb 0 m\nstop a\n{string.Join('\n', lines.Split('\n').Select(line => "    " + line))}").Legs[0].Stop!;
}

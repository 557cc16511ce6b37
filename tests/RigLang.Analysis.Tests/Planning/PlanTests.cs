using System.Collections.Immutable;
using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tests.Trips;
using RigLang.Mechanics;

namespace RigLang.Analysis.Tests.Planning;

/// <summary>The fastest way to do a trip: speeds, charges, waits.</summary>
public sealed class PlanTests
{
    private const string Level = """

            climb 0 m
            descent 0 m
            altitude 0 m
            air 21.00313 °C
            wind 0 km/h head
        """;

    private static string Leg(string name, int kilometres, string more = "") => $"leg {name}\n    distance {kilometres} km{Level}{(more.Length == 0 ? "" : "\n    " + more)}\n";

    private static TripStudy Trip(string lines, string rig = Journey.Electric) => Journey.Of(rig, lines);

    private static ImmutableArray<PlanRow> Plan(string lines, string rig = Journey.Electric) => PlanTable.Of(Trip(lines, rig));

    [Fact]
    public void With_charge_to_spare_nothing_is_slowed_and_nothing_charged()
    {
        var trip = Trip($"start-charge 90 %\nreserve 10 %\n{Leg("a", 80)}stop a\n    charger 150 kW dc\n{Leg("b", 20)}");

        PlanTable.Of(trip).Should().OnlyContain(row => row.HeldBy != null && row.Charging == null);
        trip.Value("fastest-time").Should().BeApproximately(100 / 90.0 * 3600, 1);
    }

    [Fact]
    public void Far_from_a_charger_it_goes_slower()
    {
        var row = Plan($"start-charge 90 %\nreserve 10 %\n{Leg("a", 150)}")[0];

        row.HeldBy.Should().BeNull();
        row.Speed.Should().BeLessThan(89 / 3.6);
        row.Left.Should().BeInRange(0.10, 0.15);
    }

    [Fact]
    public void Between_many_alike_chargers_the_pace_is_that_of_the_closed_form()
    {
        // 150 kW as long as it is less than half charged; plugging in takes no time, so every stop is a short one.
        var legs = string.Concat(Enumerable.Range(0, 12).Select(number => Leg($"a{number}", 40) + $"stop a{number}\n    charger 60 kW dc\n    connect 0 min\n"));
        var best = PaceOptimum.FastestSpeed(0.88, 60e3, 1500, 1.2, 2.6);

        var rows = Plan($"start-charge 40 %\nreserve 10 %\ncomfort-speed 130 km/h\n{legs}");

        rows.Skip(4).SkipLast(2).Average(row => row.Speed).Should().BeApproximately(best, 2.6 / 3.6, "the speeds go in steps of 5 km/h");
    }

    [Fact]
    public void It_is_no_slower_than_the_trip_as_written()
    {
        const string Lines = "start-charge 90 %\nreserve 10 %\n";
        string Stop(string name) => $"stop {name}\n    charger 150 kW dc\n    charge-to 80 %\n    connect 5 min\n    pause 10 min\n";
        var trip = Trip(Lines + Leg("a", 100) + Stop("a") + Leg("b", 110) + Stop("b") + Leg("c", 100));

        trip.Value("fastest-time").Should().BeLessThan(trip.Value("total-time"));
    }

    [Fact]
    public void The_leg_that_cannot_be_reached_is_named_with_what_is_lacking()
    {
        var trip = Trip($"start-charge 90 %\nreserve 10 %\n{Leg("a", 80)}stop a\n    charger 150 kW dc\n{Leg("b", 300)}");

        PlanTable.Of(trip).Should().BeEmpty();
        trip.Result("fastest-time").IsComputed.Should().BeFalse();
        // By hand, at 50 km/h: 300 km × (0.010 × 4900 × 9.80665 + 0.6 × 2.6 × 13.889²) N ÷ 0.88 = 74.0 kWh, and 1.5 kW for 6 h; a full battery less the reserve gives 72.
        trip.Result("fastest-time").Refusal.Should().Be("b can't be reached: from a it takes 83.0 kWh even at 50 km/h and with 10 % kept, 11.0 kWh more than can be aboard there");
    }

    [Fact]
    public void Each_cap_holds_and_is_named()
    {
        const string Lines = "start-charge 90 %\ncomfort-speed 95 km/h\n";

        Plan(Lines + Leg("a", 30))[0].HeldBy!.Words.Should().Be("comfort-speed");
        Plan(Lines + Leg("a", 30, "speed-limit 80 km/h"))[0].HeldBy.Should().Be(new SpeedCap(80 / 3.6, CapReason.Limit, "the leg's speed-limit"));
        Plan(Lines + Leg("a", 30), Journey.Electric.Replace("speed 90 km/h", "speed 90 km/h\n    rules de"))[0].HeldBy!.Reason.Should().Be(CapReason.Law);
        Plan(Lines + Leg("a", 30), Journey.Electric.Replace("mass 2500 kg", "mass 2500 kg\n    speed-rating 90 km/h"))[0].HeldBy!.Reason.Should().Be(CapReason.Plate);
        Plan("start-charge 90 %\n" + Leg("a", 30))[0].HeldBy!.Words.Should().Be("the rig's speed");
    }

    [Fact]
    public void A_rig_that_swings_is_driven_no_faster_than_it_is_steady()
    {
        // The reference rig that swings by itself from 107.72 km/h, on a battery.
        const string Swinging = """
            vehicle v
                wheelbase 2.70 m
                overhang 1.05 m
                yaw-inertia 2600 kg·m²
                rolling 0.010
                drag-area 0.7 m²
                axle front
                    carries 888.8889 kg
                    cornering-stiffness 110 kN/rad
                axle rear
                    carries 711.1111 kg
                    cornering-stiffness 150 kN/rad
                aboard nothing
                electric
                    usable-energy 80 kWh
                    auxiliary 1 kW

            trailer t
                mass 1400 kg
                tongue 52.5 kg
                coupling-to-axle 4.00 m
                yaw-inertia 3600 kg·m²
                rolling 0.010
                drag-area 1.5 m²
                axle only
                    cornering-stiffness 90 kN/rad
                aboard nothing

            rig r
                vehicle v
                trailer t
                speed 20 m/s


            """;
        var trip = Trip("start-charge 90 %\ncomfort-speed 130 km/h\n" + Leg("a", 30), Swinging);

        var row = PlanTable.Of(trip)[0];
        row.HeldBy!.Reason.Should().Be(CapReason.Steady);
        Journey.Leg(FormattableString.Invariant($"distance 10 km\nspeed {row.Speed:R} m/s"), Swinging).Value("leg-damping").Should().BeApproximately(0.05, 1e-6, "no practice asks for more");
        PlanTable.MissingForSteadiness(trip).Should().BeNull();
        PlanTable.MissingForSteadiness(Trip("start-charge 90 %\n" + Leg("a", 30))).Should().NotBeNull("nothing is said of how the rig turns");
    }

    [Fact]
    public void Charging_waits_for_the_opening_and_nights_for_the_morning()
    {
        const string Lines = "depart 2026-10-03 05:00\nstart-charge 60 %\nreserve 10 %\n";
        var stop = "stop a\n    charger 150 kW dc\n    connect 5 min\n    open 08:00 to 20:00\n";

        var early = Plan(Lines + Leg("a", 90) + stop + Leg("b", 90));
        early[0].Charging!.From.Should().Be(3 * 3600);
        early[1].LeavesAt!.Value.ToString().Should().StartWith("2026-10-03 08:");

        var hours = Plan(Lines + "driving-hours 05:00 to 06:30\n" + Leg("a", 90) + stop + Leg("b", 90));
        hours[1].LeavesAt!.Value.ToString().Should().Be("2026-10-04 05:00");
    }

    [Fact]
    public void Hours_without_a_departure_want_one() =>
        Trip($"start-charge 60 %\ndriving-hours 08:00 to 18:00\n{Leg("a", 50)}").Result("fastest-time").Missing!.Words.Should().Contain("`depart`");

    [Fact]
    public void A_leg_longer_than_the_day_is_named()
    {
        Trip($"depart 2026-10-03 08:00\nstart-charge 100 %\ndriving-hours 08:00 to 08:30\n{Leg("a", 90)}").Result("fastest-time").Refusal
            .Should().Be("from home to a takes 1 h at 90 km/h, 30 min more than the driving-hours are long");
    }

    [Fact]
    public void Of_two_posts_the_better_is_taken()
    {
        const string Lines = "start-charge 50 %\nreserve 10 %\n";
        string Stop(string other) => $"stop a\n    charger 150 kW dc\n    uncouple 40 min\n    other-charger {other}\n";

        Plan(Lines + Leg("a", 60) + Stop("50 kW dc uncouple 0 min") + Leg("b", 70))[0].Charging!.Post.Should().Be("50 kW dc");
        Plan(Lines + Leg("a", 60) + Stop("11 kW ac uncouple 0 min") + Leg("b", 70))[0].Charging!.Post.Should().Be("150 kW dc");
    }

    [Fact]
    public void More_is_kept_at_the_end_where_that_is_asked_for()
    {
        var row = Plan($"start-charge 90 %\nreserve 10 %\narrive-with 60 %\n{Leg("a", 30)}stop a\n    charger 50 kW dc\n{Leg("b", 30)}")[1];

        row.Left.Should().BeInRange(0.60, 0.63);
    }

    [Fact]
    public void A_reserve_in_kilometres_weighs_more_at_speed()
    {
        var row = Plan($"start-charge 60 %\nreserve 40 km\n{Leg("a", 70)}")[0];
        var taken = 0.60 - row.Left;
        row.Left.Should().BeGreaterThanOrEqualTo(taken * 40 / 70 - 1e-9);
    }

    [Fact]
    public void Fuel_needs_no_plan() => Trip("start-fuel 90 %\n" + Leg("a", 50), Journey.Petrol).Result("fastest-time").Applies.Should().BeFalse();

    [Fact]
    public void Nobody_solves_a_trip_that_is_only_checked()
    {
        var analysis = Study.Of(Journey.Electric + Journey.Trip($"start-charge 90 %\n{Leg("a", 80)}"));
        analysis.Findings(Study.File);
        var trip = Journey.Find(analysis);
        var checks = trip.CarriedOut;

        trip.Value("fastest-time");

        trip.CarriedOut.Should().BeGreaterThan(checks + 4, "nothing of the plan was there: result, plan, battery, ways to drive the leg, caps");
    }
}

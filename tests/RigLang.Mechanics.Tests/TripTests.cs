using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values of trip planning, and what must hold of any plan.</summary>
public sealed class TripTests
{
    private const double Capacity = 80 * 3.6e6;

    private static ChargingCurve Curve { get; } = ChargingCurve.Through([new(0.5, 150e3), new(1, 30e3)]);

    private static RoadLoad Rig { get; } = new(4900, new Rolling(0.010), 2.2);

    private static BatteryDrive Drive { get; } = new(0.85, 0.6, double.PositiveInfinity, 1000);

    [Theory]
    [InlineData(100e3, 1000, 1.20, 2.20, 31.9187)]
    [InlineData(120e3, 1500, 1.15, 2.60, 32.5668)]
    public void The_fastest_pace_in_closed_form(double power, double auxiliary, double density, double dragArea, double speed) =>
        PaceOptimum.FastestSpeed(0.85, power, auxiliary, density, dragArea).Should().BeApproximately(speed, 6e-5);

    [Theory]
    [InlineData(0.65, 11.7798)]
    [InlineData(2.20, 7.8458)]
    public void The_pace_of_least_energy(double dragArea, double speed)
    {
        PaceOptimum.LeastEnergySpeed(0.85, 1500, 1.2, dragArea).Should().BeApproximately(speed, 6e-5);
        // The closed form and a search over the model agree.
        var load = new RoadLoad(2000, new Rolling(0.01), dragArea);
        BatteryDrive drive = Drive with { Auxiliary = 1500 };
        Extremum.Least(v => drive.Over(load, new RouteSegment(1000, 0, v, 1.2)).Battery, 2, 30).Place.Should().BeApproximately(speed, 1e-4);
    }

    [Theory]
    [InlineData(3, 0.6065, 124.45)]
    [InlineData(6, 0.6717, 108.79)]
    [InlineData(10, 0.7310, 94.57)]
    public void A_charger_is_left_when_its_power_falls_to_the_mean_of_the_stop(double minutes, double charge, double kilowatts)
    {
        Departure leave = PaceOptimum.LeaveCharger(Curve, Capacity, 0.10, minutes * 60);
        leave.Charge.Should().BeApproximately(charge, 0.0002);
        (leave.Power / 1000).Should().BeApproximately(kilowatts, 0.006);
        Curve.PowerAt(leave.Charge).Should().BeApproximately(leave.Power, 50);
    }

    [Fact]
    public void Doubt_that_all_legs_share_does_not_average_out()
    {
        double[] legs = [60 * 0.42 * 3.6e6, 80 * 0.42 * 3.6e6, 50 * 0.42 * 3.6e6];
        ArrivalCharge arrival = ArrivalCharge.After(0.90, 100 * 3.6e6, legs, new TripDoubt(0.01, 0.02, 0.06, 0.05));
        arrival.Mean.Should().BeApproximately(0.1020, 1e-9);
        arrival.Deviation.Should().BeApproximately(0.05655, 6e-6);
        arrival.Quantile(0.05).Should().BeApproximately(0.00898, 1e-4);
        arrival.ChanceBelow(0.05).Should().BeApproximately(0.1789, 1e-4);

        ArrivalCharge independent = ArrivalCharge.After(0.90, 100 * 3.6e6, legs, new TripDoubt(0.01, 0.02, 0, Math.Sqrt((0.06 * 0.06) + (0.05 * 0.05))));
        independent.Deviation.Should().BeApproximately(0.0412, 0.002);
        independent.ChanceBelow(0.05).Should().BeApproximately(0.104, 0.006);
        new ArrivalCharge(0.3, 0).ChanceBelow(0.2).Should().Be(0);
        new ArrivalCharge(double.NaN, 0.1).ChanceBelow(0.2).Should().Be(double.NaN);
    }

    [Fact]
    public void With_enough_charge_the_fastest_speed_is_driven()
    {
        DayPlan plan = DayPlanner.Plan(Request([80], [null]));
        plan.Outcome.Should().Be(PlanOutcome.Found);
        plan.Legs[0].Choice.Speed.Should().BeApproximately(90 / 3.6, 1e-9);
    }

    [Fact]
    public void A_charger_on_the_way_is_used_no_more_than_needed()
    {
        DayPlan plan = DayPlanner.Plan(Request([120, 120], [Curve, null]));
        plan.Outcome.Should().Be(PlanOutcome.Found);
        plan.Legs[0].DepartureCharge.Should().BeGreaterThan(plan.Legs[0].ArrivalCharge);
        plan.Legs[1].ArrivalCharge.Should().BeInRange(0.10, 0.104, "the reserve is met and not much more");
        plan.Legs[1].Leave.Should().BeApproximately(
            plan.Legs[0].Arrive + 300 + Curve.Time(Capacity, plan.Legs[0].ArrivalCharge, plan.Legs[0].DepartureCharge), 1e-6);
    }

    [Fact]
    public void When_no_plan_exists_the_leg_that_breaks_it_is_named_with_what_is_missing()
    {
        DayPlan plan = DayPlanner.Plan(Request([100, 300], [Curve, null]));
        plan.Outcome.Should().Be(PlanOutcome.OutOfEnergy);
        plan.BreakingLeg.Should().Be(1);
        double least = Choices(300).Min(choice => choice.Energy);
        plan.Shortage.Should().BeApproximately(least - (0.9 * Capacity), Capacity * 0.002);
        plan.Arrival.Should().Be(double.NaN);
    }

    [Fact]
    public void Times_of_the_day_are_kept()
    {
        PlanRequest request = Request([120, 120], [Curve, null]);
        DayPlan free = DayPlanner.Plan(request);
        DayPlan waits = DayPlanner.Plan(request with { Stops = [request.Stops[0] with { Opening = new DailyWindow(9000, 30_000), Pause = 600 }, request.Stops[1]] });
        waits.Arrival.Should().BeGreaterThan(free.Arrival);
        waits.Legs[0].Charging!.From.Should().Be(9000);
        waits.Legs[1].Leave.Should().Be(waits.Legs[0].Charging!.To);
        DayPlan night = DayPlanner.Plan(request with { Stops = [request.Stops[0] with { NotBefore = 60_000 }, request.Stops[1]] });
        night.Legs[1].Leave.Should().Be(60_000);
        DayPlan late = DayPlanner.Plan(request with { Stops = [request.Stops[0], request.Stops[1] with { ArriveBy = free.Arrival - 600 }] });
        late.Outcome.Should().Be(PlanOutcome.OutOfTime);
        late.Lateness.Should().BeApproximately(600, 1, "the fastest plan is as much too late");
        DayPlanner.Plan(request with { Stops = [request.Stops[0] with { Opening = new DailyWindow(0, 100) }, request.Stops[1]] })
            .Outcome.Should().Be(PlanOutcome.OutOfEnergy, "in so short a time too little is charged");
    }

    [Fact]
    public void Who_comes_after_closing_charges_the_next_morning()
    {
        PlanRequest request = Request([120, 120], [Curve, null]);
        DayPlan plan = DayPlanner.Plan(request with { Stops = [request.Stops[0] with { Opening = new DailyWindow(-3600, 3600 + 1800) }, request.Stops[1]] });
        plan.Legs[0].Charging!.From.Should().Be(86_400 - 3600);
    }

    [Fact]
    public void A_leg_that_would_end_after_the_hours_for_driving_waits_for_the_next_day()
    {
        PlanRequest request = Request([80, 80], [null, null], Drive with { DriveEfficiency = 1 }, [20]);
        double leg = 80_000 / 20.0;
        var hours = new DailyWindow(0, 1.5 * leg);
        DayPlan plan = DayPlanner.Plan(request with { Hours = [hours, hours], Reserve = 0 });
        plan.Legs[1].Leave.Should().Be(86_400);
        plan.Arrival.Should().Be(86_400 + leg);
        DayPlan none = DayPlanner.Plan(request with { Hours = [hours, new DailyWindow(0, leg - 500)], Reserve = 0 });
        (none.Outcome, none.BreakingLeg).Should().Be((PlanOutcome.OutOfTime, 1));
        none.Lateness.Should().BeApproximately(500, 1e-6);
    }

    [Theory]
    [InlineData(100, 50, 0, 10, 100)]
    [InlineData(100, 50, 120, 10, 120)]
    [InlineData(100, 50, 140, 10, 140)]
    [InlineData(100, 50, 141, 10, 86_500)]
    [InlineData(-86_300, 50, 120, 10, 120)]
    [InlineData(80_000, 20_000, 90_000, 5_000, 90_000)]
    [InlineData(100, 50, 120, 51, double.PositiveInfinity)]
    [InlineData(100, 86_400, 120, 1e6, 120)]
    public void Hours_of_the_day_come_again_each_day(double opens, double length, double from, double duration, double start) =>
        new DailyWindow(opens, length).Start(from, duration).Should().Be(start);

    [Fact]
    public void Of_two_posts_the_one_that_is_done_earlier_is_taken()
    {
        PlanRequest request = Request([120, 120], [Curve, null]);
        DayPlan Among(params PlanPost[] posts) => DayPlanner.Plan(request with { Stops = [request.Stops[0] with { Posts = posts }, request.Stops[1]] });
        // Uncoupling for the strong post takes longer than the weak one needs for the little that is wanted.
        var (strong, weak, slow) = (new PlanPost(Curve, 1500), new PlanPost(Curve.LimitedTo(75e3), 0), new PlanPost(Curve.LimitedTo(11e3), 0));
        Among(strong, weak).Legs[0].Charging!.Post.Should().Be(1);
        Among(strong, slow).Legs[0].Charging!.Post.Should().Be(0);
        Among(strong, weak).Arrival.Should().BeLessThanOrEqualTo(Math.Min(Among(strong).Arrival, Among(weak).Arrival));
    }

    [Fact]
    public void A_pass_on_the_way_must_be_reached_too()
    {
        PlanRequest request = Request([80], [null], Drive, [20]);
        LegChoice over = request.Legs[0][0];
        DayPlanner.Plan(request with { Legs = [[over with { Deepest = 0.94 * Capacity }]] }).Outcome.Should().Be(PlanOutcome.Found);
        DayPlan tooHigh = DayPlanner.Plan(request with { Legs = [[over with { Deepest = Capacity }]] });
        tooHigh.Outcome.Should().Be(PlanOutcome.OutOfEnergy);
        tooHigh.Shortage.Should().BeApproximately(0.05 * Capacity, 1);
    }

    [Fact]
    public void A_full_battery_takes_nothing_back_before_a_climb()
    {
        // Down to the river and up again: what the descent would give back finds no room, and the climb takes it all the same.
        PlanRequest request = Request([80], [null], Drive, [20]);
        LegChoice river = new(20, 4000, 0.05 * Capacity) { SinceFull = 0.20 * Capacity };
        DayPlanner.Plan(request with { Legs = [[river]] }).Legs[0].ArrivalCharge.Should().Be(0.80);
        DayPlanner.Plan(request with { Legs = [[river]], StartCharge = 0.60 }).Legs[0].ArrivalCharge.Should().BeApproximately(0.55, 1e-12);
    }

    [Fact]
    public void A_reserve_of_its_own_makes_a_way_of_driving_dearer()
    {
        PlanRequest request = Request([80], [null], Drive, [20, 25]);
        double left = 0.95 - (request.Legs[0][1].Energy / Capacity);
        LegChoice[] Asking(double reserve) => [request.Legs[0][0], request.Legs[0][1] with { Reserve = reserve }];
        DayPlanner.Plan(request with { Legs = [Asking(left - 0.001)] }).Legs[0].Choice.Speed.Should().Be(25);
        DayPlanner.Plan(request with { Legs = [Asking(left + 0.001)] }).Legs[0].Choice.Speed.Should().Be(20);
    }

    [Property(MaxTest = 20)]
    public void More_chargers_never_lengthen_the_trip(int a, int b, int c)
    {
        double[] legs = [Between(a, 30, 130), Between(b, 30, 130), Between(c, 30, 130)];
        DayPlan few = DayPlanner.Plan(Request(legs, [null, Curve, null])), many = DayPlanner.Plan(Request(legs, [Curve, Curve, null]));
        if (few.Outcome == PlanOutcome.Found)
            many.Arrival.Should().BeLessThanOrEqualTo(few.Arrival + 20, "within the rounding of one step of charge");
    }

    [Property(MaxTest = 10)]
    public void Finer_steps_find_no_later_arrival(int a, int b)
    {
        PlanRequest request = Request([Between(a, 60, 130), Between(b, 60, 130)], [Curve, null]);
        DayPlan coarse = DayPlanner.Plan(request with { Steps = 500 }), fine = DayPlanner.Plan(request with { Steps = 4000 });
        if (coarse.Outcome == PlanOutcome.Found)
            fine.Arrival.Should().BeLessThanOrEqualTo(coarse.Arrival + 20);
    }

    [Fact]
    public void Finer_steps_converge()
    {
        PlanRequest request = Request([110, 120], [Curve, null]);
        double Arrival(int steps) => DayPlanner.Plan(request with { Steps = steps }).Arrival;
        Math.Abs(Arrival(2500) - Arrival(5000)).Should().BeLessThan(10);
        Math.Abs(Arrival(500) - Arrival(5000)).Should().BeLessThan(60);
    }

    [Property(MaxTest = 20)]
    public void No_plan_arrives_below_the_reserve(int a, int b, int c)
    {
        DayPlan plan = DayPlanner.Plan(Request([Between(a, 20, 140), Between(b, 20, 140), Between(c, 20, 140)], [Curve, Curve.LimitedTo(50e3), null]));
        plan.Legs.Should().OnlyContain(leg => leg.ArrivalCharge >= 0.10 - 1e-9 && leg.DepartureCharge >= leg.ArrivalCharge - 1e-12);
    }

    [Fact]
    public void Splitting_a_leg_without_a_charger_changes_nothing()
    {
        // At one speed: with a choice of speeds two halves can be driven at two speeds.
        PlanRequest whole = Request([150], [null], Drive, [22]), halves = Request([75, 75], [null, null], Drive, [22]);
        DayPlanner.Plan(halves).Arrival.Should().BeApproximately(DayPlanner.Plan(whole).Arrival, 1e-6);
    }

    [Fact]
    public void With_a_flat_curve_and_many_stops_the_speed_tends_to_the_closed_form()
    {
        double[] speeds = [.. Enumerable.Range(0, 61).Select(i => 20 + (0.4 * i))];
        double best = PaceOptimum.FastestSpeed(0.85, 100e3, 1000, 1.2, 2.2);
        PlanRequest request = Request([.. Enumerable.Repeat(40.0, 12)], [.. Enumerable.Repeat<ChargingCurve?>(ChargingCurve.Level(100e3), 11), null], Drive, speeds);
        request = request with { Steps = 2000, Stops = [.. request.Stops.Select(stop => stop with { Posts = [.. stop.Posts.Select(post => post with { Overhead = 0 })] })] };
        DayPlan plan = DayPlanner.Plan(request);
        // The first legs live on the charge brought along; the middle ones pay for theirs.
        plan.Legs.Skip(4).Average(leg => leg.Choice.Speed).Should().BeApproximately(best, 1.5);
    }

    [Fact]
    public void Unplugging_at_whole_percents_is_hardly_slower()
    {
        PlanRequest request = Request([110, 120], [Curve, null]);
        DayPlan any = DayPlanner.Plan(request), whole = DayPlanner.Plan(request with { ChargeStep = 0.01 });
        double percents = whole.Legs[0].DepartureCharge * 100;
        percents.Should().BeApproximately(Math.Round(percents), 1e-9);
        (whole.Arrival - any.Arrival).Should().BeInRange(0, 30);
    }

    [Fact]
    public void Missing_numbers_make_no_plan()
    {
        PlanRequest request = Request([80], [null]);
        DayPlanner.Plan(request with { Capacity = double.NaN }).Outcome.Should().Be(PlanOutcome.NotComputable);
        DayPlanner.Plan(request with { Legs = [] , Stops = [] }).Outcome.Should().Be(PlanOutcome.NotComputable);
        DayPlanner.Plan(request with { Legs = [[new LegChoice(20, 100, double.NaN)]] }).Outcome.Should().Be(PlanOutcome.NotComputable);
        DayPlanner.Plan(request with { Stops = [new PlanStop { Pause = double.NaN }] }).Outcome.Should().Be(PlanOutcome.NotComputable);
        PaceOptimum.LeaveCharger(Curve, Capacity, double.NaN, 60).Charge.Should().Be(double.NaN);
    }

    private static PlanRequest Request(double[] kilometres, ChargingCurve?[] chargers) => Request(kilometres, chargers, Drive, [20, 21, 22, 23, 24, 25]);

    private static PlanRequest Request(double[] kilometres, ChargingCurve?[] chargers, BatteryDrive drive, double[] speeds) => new()
    {
        Capacity = Capacity, StartCharge = 0.95, Reserve = 0.10, Legs = [.. kilometres.Select(distance => Choices(distance, drive, speeds))],
        Stops = [.. chargers.Select(curve => new PlanStop { Posts = curve is null ? [] : [new PlanPost(curve, 300)] })],
    };

    private static IReadOnlyList<LegChoice> Choices(double kilometres) => Choices(kilometres, Drive, [20, 21, 22, 23, 24, 25]);

    private static IReadOnlyList<LegChoice> Choices(double kilometres, BatteryDrive drive, double[] speeds) =>
    [
        .. speeds.Select(speed =>
        {
            LegEnergy energy = drive.Over(Rig, new RouteSegment(kilometres * 1000, 0, speed, 1.2));
            return new LegChoice(speed, energy.Time, energy.Battery);
        }),
    ];
}

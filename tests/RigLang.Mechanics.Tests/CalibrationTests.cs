using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;
using static RigLang.Mechanics.Tests.ReferenceRig;

namespace RigLang.Mechanics.Tests;

/// <summary>Synthetic data with known truth.</summary>
public sealed class CalibrationTests
{
    private static readonly double[] Speeds =
        [33.0000, 30.2067, 27.7158, 25.4734, 23.4374, 21.5746, 19.8580, 18.2659, 16.7803, 15.3862, 14.0710, 12.8242, 11.6365];

    private static double[] Times => [.. Enumerable.Range(0, Speeds.Length).Select(i => i * 10.0)];

    private static CoastDown Truth { get; } = new(2472, 223.5916, 0.468);

    [Fact]
    public void A_coast_down_follows_its_closed_form()
    {
        foreach ((double time, double speed) in Times.Zip(Speeds))
            Truth.SpeedAfter(33, time).Should().BeApproximately(speed, 6e-5);
        Truth.Time(33, 0).Should().BeApproximately(238.2209, 6e-5);
        Truth.DistanceToRest(33).Should().BeApproximately(3136.63, 0.006);
        Truth.SpeedAfter(33, 500).Should().Be(0);
    }

    [Property]
    public void Time_and_speed_of_a_coast_down_agree(int from, int share)
    {
        double start = Between(from, 5, 40), end = start * Between(share, 0.05, 0.95);
        Truth.SpeedAfter(start, Truth.Time(start, end)).Should().BeApproximately(end, 1e-9);
        var air = new CoastDown(2000, 0, 0.5);
        air.SpeedAfter(start, air.Time(start, end)).Should().BeApproximately(end, 1e-9);
    }

    [Fact]
    public void A_rounded_table_gives_the_road_load_back()
    {
        CoastDownFit fit = CoastDownFit.Of(Times, [.. Speeds.Select(speed => Math.Round(speed, 2))], 2400, 0.03);
        double Rolling(CoastDown road) => road.Constant / (2400 * Constants.Gravity);
        double DragArea(CoastDown road) => 2 * road.Square / 1.2;
        Rolling(fit.Intervals).Should().BeApproximately(0.009502, 1.5e-6);
        DragArea(fit.Intervals).Should().BeApproximately(0.7785, 1e-4);
        Rolling(fit.Curve).Should().BeApproximately(0.0095, 0.0095 * 0.0005);
        DragArea(fit.Curve).Should().BeApproximately(0.78, 0.78 * 0.0005);
        fit.Scatter.Should().BeInRange(0.0005, 0.01, "the table is rounded to 0.01 m/s");
        fit.ConstantError.Should().BePositive();
        fit.Correlation.Should().BeInRange(-1, -0.5, "more rolling with less air fits the same table nearly as well");
        CoastDownFit.Of([0, 10, 20], [33, 30.21, 27.72], 2400, 0.03).ConstantError.Should().Be(double.NaN, "three points fit any three numbers");
        CoastDownFit.Of([0, 10, 20], [33, 30.21, 27.72], 2400, 0.03, 0, 0.003).ConstantError.Should().BePositive("their rounding is known");
    }

    [Fact]
    public void A_known_grade_is_taken_off()
    {
        double grade = 0.002, weight = 2400 * Constants.Gravity * Slope.Sine(grade);
        var uphill = new CoastDown(2472, 223.5916 + weight, 0.468);
        CoastDownFit fit = CoastDownFit.Of(Times, [.. Times.Select(time => uphill.SpeedAfter(33, time))], 2400, 0.03, grade);
        fit.Curve.Constant.Should().BeApproximately(223.5916, 0.001);
        fit.Curve.Square.Should().BeApproximately(0.468, 1e-5);
    }

    [Fact]
    public void A_table_that_is_no_coast_down_is_refused()
    {
        CoastDownFit.Of([0, 10, 20], [20, 25, 30], 2400, 0.03).IsDetermined.Should().BeFalse();
        CoastDownFit.Of([0, 10], [30, 25], 2400, 0.03).IsDetermined.Should().BeFalse();
        CoastDownFit.Of([0, 10, 20], [30, 28, 22], 2400, 0.03).IsDetermined.Should().BeFalse("slowing that grows as speed falls is no drag");
        CoastDownFit.Of([0, 10, 10], [30, 25, 20], 2400, 0.03).IsDetermined.Should().BeFalse();
        CoastDownFit.Of([0, 10, double.NaN], [30, 25, 20], 2400, 0.03).IsDetermined.Should().BeFalse();
    }

    private static LoggedRun[] Runs =>
    [
        Run(40, 80, 0, 0, 15.832), Run(60, 90, 150, 2, 32.445), Run(50, 100, -120, -1, 23.084), Run(30, 70, 60, 3, 12.961), Run(80, 95, -200, 0, 36.094), Run(45, 85, 300, -2, 21.627),
    ];

    [Fact]
    public void Logged_drives_give_rolling_and_drag_area_back()
    {
        RunFit fit = RunFit.Of(Runs, 0.86);
        fit.Rolling.Should().BeApproximately(0.0101997, 6e-8);
        fit.DragArea.Should().BeApproximately(2.45003, 6e-6);
        fit.RollingError.Should().BePositive();
        fit.Fit.Residuals.Should().OnlyContain(residual => Math.Abs(residual) < 3600);
    }

    [Fact]
    public void Drives_at_one_speed_cannot_tell_rolling_from_air()
    {
        RunFit fit = RunFit.Of([.. Runs.Select(run => run with { Speed = 25, HeadWind = 0 })], 0.86);
        fit.Rolling.Should().Be(double.NaN);
        fit.DragArea.Should().Be(double.NaN);
        RunFit.Of([], 0.86).Rolling.Should().Be(double.NaN);
        RunFit.Of(Runs, double.NaN).Rolling.Should().Be(double.NaN);
    }

    [Fact]
    public void Drives_told_by_a_model_give_the_same_as_the_closed_form()
    {
        RunFit line = RunFit.Of(Runs, 0.86), model = RoadLoadFit.Of([.. Runs.Select(Modelled)], [], 0.02, 1);
        // A drive along a grade rolls on the cosine of its weight: some hundred thousandths less.
        model.Rolling.Should().BeApproximately(line.Rolling, 3e-7);
        model.DragArea.Should().BeApproximately(line.DragArea, 5e-5);
        model.RollingError.Should().BeApproximately(line.RollingError, 1e-3 * line.RollingError);
        RoadLoadFit.Of([.. Runs.Select(run => Modelled(run with { Speed = 25, HeadWind = 0 }))], [], 0.01, 2).DragArea.Should().Be(double.NaN, "drives at one speed cannot tell");
        RoadLoadFit.Of([], [], 0.01, 2).DragArea.Should().Be(double.NaN);
    }

    [Property(MaxTest = 50)]
    public void Drives_with_energy_held_back_are_fitted_by_their_model(int a, int b)
    {
        // Downhill at 6 % the brakes hold, and what comes back comes back worse than what goes out.
        double rolling = Between(a, 0.006, 0.015), area = Between(b, 0.8, 3);
        double[] speeds = [15, 20, 25, 30];
        LoggedDrive[] drives = [.. speeds.Select(speed => Hilly(speed)).Select(model => new LoggedDrive(model, model(rolling, area), 3.6e5))];
        RunFit fit = RoadLoadFit.Of(drives, [], 0.01, 1.5);
        fit.Rolling.Should().BeApproximately(rolling, 1e-8);
        fit.DragArea.Should().BeApproximately(area, 1e-6);

        static Func<double, double, double> Hilly(double speed) => (rolling, area) => new BatteryDrive(0.88, 0.6, 60e3, 900).Over(
            new RoadLoad(3000, new Rolling(rolling), area), [new RouteSegment(4000, 0.06, speed, 1.2), new RouteSegment(4000, -0.06, speed, 1.2), new RouteSegment(9000, 0, speed, 1.2)]).Battery;
    }

    [Fact]
    public void A_coast_down_counts_with_the_doubt_that_its_numbers_share()
    {
        var first = new RoadLoadReading(0.010, 2.4, 1e-8, 0.01, -9e-6);
        RunFit alone = RoadLoadFit.Of([], [first], 0.02, 1);
        alone.Rolling.Should().BeApproximately(0.010, 1e-12);
        alone.DragArea.Should().BeApproximately(2.4, 1e-9);
        alone.RollingError.Should().BeApproximately(1e-4, 1e-9);
        alone.DragAreaError.Should().BeApproximately(0.1, 1e-6);
        // The mean of two by their inverse covariances: equal ones meet halfway, with half of the variance.
        RunFit both = RoadLoadFit.Of([], [first, first with { Rolling = 0.012, DragArea = 2.2 }], 0.02, 1);
        both.Rolling.Should().BeApproximately(0.011, 1e-9);
        both.DragArea.Should().BeApproximately(2.3, 1e-6);
        both.DragAreaError.Should().BeApproximately(0.1 / Math.Sqrt(2), 1e-6);
        // A drive that tells only the sum moves both along the line on which they trade: here half of a surplus that is as sure as the reading.
        double Sum(double rolling, double area) => (1e3 * rolling) + area;
        double variance = (1e6 * 1e-8) + 0.01 + (2 * 1e3 * -9e-6);
        RunFit with = RoadLoadFit.Of([new LoggedDrive(Sum, Sum(0.010, 2.4) + 0.02, Math.Sqrt(variance))], [first], 0.01, 2);
        Sum(with.Rolling, with.DragArea).Should().BeApproximately(Sum(0.010, 2.4) + 0.01, 1e-9);
    }

    [Fact]
    public void Readings_of_a_weighing_are_used_together()
    {
        double couple = Hitch.CoupleForRestoration(Vehicle, Trailer, 0.5);
        CoupledLoads slack = Hitch.Couple(Vehicle, Trailer), set = Hitch.Couple(Vehicle, Trailer, couple);
        ScaleReading[] readings =
        [
            new(WeighingState.Apart, WeighedParts.Front, Vehicle.Solo.Front, 100), new(WeighingState.Apart, WeighedParts.Rear, Vehicle.Solo.Rear, 100),
            new(WeighingState.Slack, WeighedParts.Front, slack.Front, 100), new(WeighingState.Slack, WeighedParts.Rear, slack.Rear, 100),
            new(WeighingState.Slack, WeighedParts.TrailerAxles, slack.TrailerAxles, 100), new(WeighingState.Set, WeighedParts.Front | WeighedParts.Rear, set.Vehicle, 100),
            new(WeighingState.Set, WeighedParts.TrailerAxles, set.TrailerAxles, 100), new(WeighingState.Apart, WeighedParts.Tongue, 300 * Kg, 20),
        ];
        WeighbridgeFit fit = WeighbridgeFit.Of(readings, 3.0, 1.2, 5.0);
        fit.SoloFront.Should().BeApproximately(1250 * Kg, 1e-6);
        fit.Tongue.Should().BeApproximately(300 * Kg, 1e-6);
        fit.TrailerWeight.Should().BeApproximately(2500 * Kg, 1e-6);
        fit.Couple.Should().BeApproximately(couple, 1e-6);
        fit.Fit.Spread.Should().BeApproximately(0, 1e-9);

        readings[3] = readings[3] with { Load = readings[3].Load + 1000 };
        WeighbridgeFit off = WeighbridgeFit.Of(readings, 3.0, 1.2, 5.0);
        off.Fit.Spread.Should().BeGreaterThan(2, "one reading is out by ten times its error");
        off.Fit.Residuals.Select(Math.Abs).Max().Should().Be(Math.Abs(off.Fit.Residuals[3]), "and it is the one that stands out");
    }

    [Fact]
    public void What_was_not_weighed_stays_unknown_and_the_rest_does_not()
    {
        CoupledLoads slack = Hitch.Couple(Vehicle, Trailer);
        WeighbridgeFit fit = WeighbridgeFit.Of(
            [
                new(WeighingState.Apart, WeighedParts.Front, Vehicle.Solo.Front, 50), new(WeighingState.Apart, WeighedParts.Rear, Vehicle.Solo.Rear, 50),
                new(WeighingState.Slack, WeighedParts.Front | WeighedParts.Rear, slack.Vehicle, 50),
            ], 3.0, 1.2, 5.0);
        fit.Tongue.Should().BeApproximately(300 * Kg, 1e-6);
        fit.TrailerWeight.Should().Be(double.NaN);
        fit.Couple.Should().Be(double.NaN);
        WeighbridgeFit.Of([], 3.0, 1.2, 5.0).Tongue.Should().Be(double.NaN);
        WeighbridgeFit.Of([new(WeighingState.Apart, WeighedParts.Front, 1e4, 50)], 0, 1.2, 5.0).SoloFront.Should().BeApproximately(1e4, 1e-6, "a front axle alone needs no wheelbase");
    }

    private static LoggedRun Run(double kilometres, double kilometresPerHour, double rise, double headWind, double kilowattHours) =>
        new(kilometres * 1000, kilometresPerHour / 3.6, rise, headWind, 1.18, 4650, kilowattHours * 3.6e6, 0.05 * 3.6e6, 1200);

    private static LoggedDrive Modelled(LoggedRun run)
    {
        var stretch = new RouteSegment(run.Distance, run.Rise / Math.Sqrt((run.Distance * run.Distance) - (run.Rise * run.Rise)), run.Speed, run.Density, new Wind(run.HeadWind, 0));
        return new((rolling, area) => new BatteryDrive(0.86, 0, 0, run.Auxiliary).Over(new RoadLoad(run.Mass, new Rolling(rolling), area), stretch).Battery, run.Energy, run.EnergyError);
    }
}

namespace RigLang.Mechanics.Tests;

/// <summary>Functions over lists of numbers answer any numbers too.</summary>
public sealed class TotalityOfListsTests
{
    private static readonly double[] Odd = [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 0, -1, 1, 47, 100, 1e-300, 1e300, 1e308, -3.5];

    [Fact]
    public void Any_lists_get_an_answer()
    {
        var random = new Random(11);
        double One() => Odd[random.Next(Odd.Length)];
        double[] Many(int count) => [.. Enumerable.Range(0, count).Select(_ => One())];
        for (int round = 0; round < 3000; round++)
        {
            int count = random.Next(0, 6);
            double[] a = Many(count), b = Many(random.Next(8) == 0 ? count + 1 : count), c = Many(count);
            NoInfinity(VehicleStatics.FromItems([.. a.Select(x => new PointMass(x, One()))], One()).Rear);
            NoInfinity(TrailerStatics.FromItems([.. a.Select(x => new PointMass(x, One()))], One()).TongueMass);
            NoInfinity(PointMass.Sum([.. a.Select(x => new PointMass(x, One(), One()))]).Height);
            AxleGroupLoads group = AxleGroup.Independent(One(), One(), [.. a.Select(x => new SprungAxle(x, One()))], One(), One());
            NoInfinity([group.Ball, .. group.Loads]);
            NoInfinity([AxleGroup.Equalised(One(), One(), a, One()).Ball, AxleGroup.EquivalentOfIndependent([.. a.Select(x => new SprungAxle(x, One()))])]);
            NoInfinity(YawInertia.With(One(), new PointMass(One(), One()), [.. a.Select(x => new PointMass(x, One()))]));
            NoInfinity(ElevationProfile.Smooth(a, b, One()));
            NoInfinity(ElevationProfile.FillGaps(a, b));
            NoInfinity(ElevationProfile.Totals(a, b, One()).SteepestUp);
            NoInfinity([.. Track.Stretches(a, c, b, One(), One()).Select(stretch => stretch.Length)]);
            NoInfinity([.. LeastSquares.Fit(Many(count * 2), a, b, 2).Values]);
            NoInfinity(CoastDownFit.Of(a, b, One(), One(), One()).Curve.Constant);
            NoInfinity(RunFit.Of([.. a.Select(x => new LoggedRun(x, One(), One(), One(), One(), One(), One(), One(), One()))], One()).Rolling);
            NoInfinity(RoadLoadFit.Of([.. a.Select(x => new LoggedDrive((r, d) => (x * r) + d, One(), One()))], [new RoadLoadReading(One(), One(), One(), One(), One())], One(), One()).DragArea);
            NoInfinity(WeighbridgeFit.Of([.. a.Select(x => new ScaleReading(WeighingState.Set, (WeighedParts)random.Next(16), x, One()))], One(), One(), One()).Couple);
            NoInfinity(ArrivalCharge.After(One(), One(), a, new TripDoubt(One(), One(), One(), One())).Deviation);
            NoInfinity(OscillationDecay.Of(a, random.Next(-3, 9)));
            NoInfinity(StraightLine.Fit(a, b).Slope);
            ChargingCurve curve = ChargingCurve.Through([.. a.Select(x => new ChargePoint(x / 100, One()))]);
            NoInfinity(curve.LimitedToCurrent(One(), One(), One()).Time(One(), One(), One()));
            NoInfinity(curve.ChargedAfter(One(), One(), One()));
            NoInfinity(new GearedDrive([.. a.Select(x => new TorquePoint(x, One()))], b, One(), One(), One()).Force(One()));
            NoInfinity(DayPlanner.Plan(new PlanRequest
            {
                Capacity = One(), StartCharge = One(), Reserve = One(), Legs = [[.. a.Select(x => new LegChoice(1, x, One()) { Deepest = One(), SinceFull = One(), Reserve = One() })]], Stops = [new PlanStop { Posts = [new PlanPost(curve, One())], Pause = One(), Opening = new DailyWindow(One(), One()) }], Steps = 10,
            }).Arrival);
        }
    }

    private static void NoInfinity(params double[] numbers) => numbers.Should().NotContain(number => double.IsInfinity(number));
}

using static RigLang.Mechanics.Tests.ReferenceRig;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values computed from the equations by two formulations; not outside checks.</summary>
public sealed class StaticsTests
{
    [Fact]
    public void Cargo_divides_between_the_axles_by_its_position()
    {
        AxleLoads loads = VehicleStatics.FromItems([new(60, -0.35), new(150, 1.35), new(90, 2.25), new(75, 3.35)], 3.0);
        (loads.Front / Kg).Should().BeApproximately(163.25, 1e-9);
        (loads.Rear / Kg).Should().BeApproximately(211.75, 1e-9);
    }

    [Theory]
    [InlineData(0, 0, 300.000, 1130.000, 1570.000, 2200.000)]
    [InlineData(0.5, 1423.5, 270.968, 1190.000, 1480.968, 2229.032)]
    [InlineData(1, 2847.1, 241.935, 1250.000, 1391.935, 2258.065)]
    public void Spring_bars_shift_load_from_the_rear_axle_to_the_front_and_the_trailer(
        double restoration, double couple, double ball, double front, double rear, double trailer)
    {
        double computed = Hitch.CoupleForRestoration(Vehicle, Trailer, restoration);
        CoupledLoads loads = Hitch.Couple(Vehicle, Trailer, computed);
        computed.Should().BeApproximately(couple, 0.05);
        (loads.Ball / Kg).Should().BeApproximately(ball, 0.0005);
        (loads.Front / Kg).Should().BeApproximately(front, 0.0005);
        (loads.Rear / Kg).Should().BeApproximately(rear, 0.0005);
        (loads.TrailerAxles / Kg).Should().BeApproximately(trailer, 0.0005);
        (loads.Total / Kg).Should().BeApproximately(4900, 1e-9);
    }

    [Fact]
    public void Independent_axles_carry_by_their_travel_and_equalised_ones_equally()
    {
        AxleGroupLoads independent = AxleGroup.Independent(2500 * Kg, 4.40, [new(4.60, 1e5), new(5.40, 1e5)]);
        (independent.Loads[0] / Kg).Should().BeApproximately(1005.564, 0.0005);
        (independent.Loads[1] / Kg).Should().BeApproximately(1180.445, 0.001);
        (independent.Ball / Kg).Should().BeApproximately(313.990, 0.001);

        AxleGroupLoads equalised = AxleGroup.Equalised(2500 * Kg, 4.40, [4.60, 5.40]);
        equalised.Loads.Should().AllSatisfy(load => (load / Kg).Should().BeApproximately(1100, 1e-9));
        (equalised.Ball / Kg).Should().BeApproximately(300, 1e-9);
    }

    [Fact]
    public void The_equivalent_axle_of_an_independent_group_gives_its_tongue_mass()
    {
        SprungAxle[] axles = [new(4.60, 0.9e5), new(5.40, 1.1e5)];
        double axle = AxleGroup.EquivalentOfIndependent(axles);
        TrailerStatics.TongueMass(2500, 4.40, axle).Should().BeApproximately(AxleGroup.Independent(2500 * Kg, 4.40, axles).Ball / Kg, 1e-9);
    }

    [Fact]
    public void A_nose_high_trailer_moves_load_to_its_rear_axle()
    {
        SprungAxle[] axles = [new(4.60, 1e5), new(5.40, 1e5)];
        AxleGroupLoads level = AxleGroup.Independent(2500 * Kg, 4.40, axles);
        AxleGroupLoads high = AxleGroup.Independent(2500 * Kg, 4.40, axles, ballRise: 0.05);
        high.Loads[1].Should().BeGreaterThan(level.Loads[1]);
        high.Loads[0].Should().BeLessThan(level.Loads[0]);
        (high.Loads.Sum() + high.Ball).Should().BeApproximately(2500 * Kg, 1e-6);
    }

    [Fact]
    public void A_very_nose_high_trailer_lifts_its_front_axle_and_still_balances()
    {
        SprungAxle[] axles = [new(4.60, 1e5), new(5.40, 1e5)];
        AxleGroupLoads loads = AxleGroup.Independent(2500 * Kg, 4.40, axles, ballRise: 1.5);
        loads.Loads[0].Should().Be(0);
        (loads.Loads[1] * 5.40).Should().BeApproximately(2500 * Kg * 4.40, 1e-6, "the rear axle alone holds the moment about the ball");
    }

    [Theory]
    [InlineData(0, 4903.3, -1961.3, 882.6)]
    [InlineData(1, -2372.6, 4745.2, -2135.3)]
    public void Set_bars_turn_the_bending_of_the_receiver_round(double restoration, double rear, double forward, double bending)
    {
        CoupledLoads loads = Hitch.Couple(Vehicle, Trailer, Hitch.CoupleForRestoration(Vehicle, Trailer, restoration));
        ReceiverForces forces = Receiver.Forces(loads.Ball, loads.Couple, 0.30, 0.45);
        forces.Rear.Should().BeApproximately(rear, 0.06);
        forces.Forward.Should().BeApproximately(forward, 0.06);
        forces.Bending.Should().BeApproximately(bending, 0.06);
    }

    [Theory]
    [InlineData(0, -22.63, 71.01, 1.7885, 108.47)]
    [InlineData(1, 0, 40.91, 0.7813, 57.27)]
    public void Springs_give_way_to_the_changed_loads(double restoration, double front, double rear, double pitch, double drop)
    {
        CoupledLoads loads = Hitch.Couple(Vehicle, Trailer, Hitch.CoupleForRestoration(Vehicle, Trailer, restoration));
        Attitude attitude = Attitude.FromLoads(new AxleLoads(loads.Front, loads.Rear) - Vehicle.Solo, 52_000, 58_000, 3.0, 1.2);
        (attitude.FrontSink * 1000).Should().BeApproximately(front, 0.005);
        (attitude.RearSink * 1000).Should().BeApproximately(rear, 0.005);
        (attitude.Pitch * 180 / Math.PI).Should().BeApproximately(pitch, 0.0001);
        (attitude.BallDrop * 1000).Should().BeApproximately(drop, 0.006);
    }

    [Fact]
    public void A_weighbridge_gives_back_ball_force_couple_and_restoration_by_every_way()
    {
        double couple = Hitch.CoupleForRestoration(Vehicle, Trailer, 0.7);
        CoupledLoads slack = Hitch.Couple(Vehicle, Trailer), set = Hitch.Couple(Vehicle, Trailer, couple);
        WeighbridgeReading reading = Weighbridge.Read(Vehicle.Solo,
            new(slack.Front, slack.Rear, slack.TrailerAxles), new(set.Front, set.Rear, set.TrailerAxles), 3.0, 1.2, 5.0);
        double[] balls = [reading.BallFromFront, reading.BallFromRear, reading.BallFromSum];
        balls.Should().AllSatisfy(ball => ball.Should().BeApproximately(300 * Kg, 1e-6));
        double[] couples = [reading.CoupleFromFront, reading.CoupleFromRear, reading.CoupleFromTrailer];
        couples.Should().AllSatisfy(c => c.Should().BeApproximately(couple, 1e-6));
        reading.Restoration.Should().BeApproximately(0.7, 1e-12);
    }

    [Fact]
    public void A_beam_divides_the_tongue_between_scale_and_support()
    {
        TrailerStatics.TongueFromBeam(100, 1.0, 0.5).Should().BeApproximately(300, 1e-9);
    }
}

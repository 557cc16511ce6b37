using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

public sealed class StaticsPropertyTests
{
    [Property]
    public void Axle_loads_sum_to_the_weight(int m1, int x1, int m2, int x2, int wheelbase)
    {
        double l = Between(wheelbase, 2, 5), a = Between(m1, 1, 900), b = Between(m2, 1, 900);
        AxleLoads loads = VehicleStatics.FromItems([new(a, Between(x1, -1, 7)), new(b, Between(x2, -1, 7))], l);
        loads.Total.Should().BeApproximately((a + b) * Constants.Gravity, 1e-6);
    }

    [Property]
    public void A_couple_never_changes_the_sum_of_the_axle_loads(int couple, int tongue, int overhang, int axle)
    {
        (TowGeometry vehicle, TrailerLoad trailer) = Rig(tongue, overhang, axle);
        double weight = vehicle.Solo.Total + (trailer.Mass * Constants.Gravity);
        Hitch.Couple(vehicle, trailer, Between(couple, -3000, 6000)).Total.Should().BeApproximately(weight, 1e-6);
    }

    [Property]
    public void Loads_are_linear_in_the_couple(int couple, int tongue, int overhang, int axle)
    {
        (TowGeometry vehicle, TrailerLoad trailer) = Rig(tongue, overhang, axle);
        double m = Between(couple, 0, 5000);
        CoupledLoads none = Hitch.Couple(vehicle, trailer), once = Hitch.Couple(vehicle, trailer, m), twice = Hitch.Couple(vehicle, trailer, 2 * m);
        (twice.Front - none.Front).Should().BeApproximately(2 * (once.Front - none.Front), 1e-6);
        (twice.Rear - none.Rear).Should().BeApproximately(2 * (once.Rear - none.Rear), 1e-6);
        (none.Ball - once.Ball).Should().BeApproximately(m / trailer.Axle, 1e-6);
    }

    [Property]
    public void Full_restoration_gives_the_front_axle_its_solo_load(int tongue, int overhang, int axle)
    {
        (TowGeometry vehicle, TrailerLoad trailer) = Rig(tongue, overhang, axle);
        CoupledLoads loads = Hitch.Couple(vehicle, trailer, Hitch.CoupleForRestoration(vehicle, trailer, 1));
        loads.Front.Should().BeApproximately(vehicle.Solo.Front, 1e-6);
    }

    [Property]
    public void Receiver_forces_sum_to_the_ball_force(int ball, int couple, int pull)
    {
        double v = Between(ball, -500, 4000);
        ReceiverForces forces = Receiver.Forces(v, Between(couple, 0, 4000), 0.3, 0.5, Between(pull, -5000, 5000), 0.1);
        (forces.Rear + forces.Forward).Should().BeApproximately(v, 1e-6);
    }

    [Property]
    public void Moving_loads_sum_to_weight_across_the_road_and_ball_force(int grade, int acceleration, int pull, int ball)
    {
        double g = Between(grade, -0.3, 0.3), v = Between(ball, 0, 3000);
        AxleLoads loads = VehicleStatics.Moving(new VehicleBalance
        {
            Mass = 2000, Wheelbase = 2.9, MassCentre = 1.4, MassCentreHeight = 0.65, Grade = g, Acceleration = Between(acceleration, -8, 4),
            AirForce = 600, AirForceHeight = 0.9, Pull = Between(pull, -4000, 4000), BallHeight = 0.42, BallForce = v, Overhang = 1.1,
        });
        loads.Total.Should().BeApproximately((2000 * Constants.Gravity / Math.Sqrt(1 + (g * g))) + v, 1e-6);
    }

    private static (TowGeometry, TrailerLoad) Rig(int tongue, int overhang, int axle) =>
        (new(new AxleLoads(12_000, 11_500), 3.0, Between(overhang, 0.5, 1.8)), new(2000, Between(tongue, 20, 400), Between(axle, 2.5, 7)));
}

using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Groups of axles, receivers and ride attitude: balances, symmetry and limits.</summary>
public sealed class AxleGroupPropertyTests
{
    [Property]
    public void Independent_axles_balance_force_and_moment(int mass, int centre, int first, int apart, int stiffer, int rise, int couple)
    {
        double weight = Between(mass, 500, 3500) * Constants.Gravity, l1 = Between(first, 3, 6), l2 = l1 + Between(apart, 0.6, 1.2), x = Between(centre, 2.6, l1);
        SprungAxle[] axles = [new(l1, 40e3), new(l2, 40e3 * Between(stiffer, 0.5, 2))];
        double m = Between(couple, 0, 2000), raised = Between(rise, -0.05, 0.05);
        AxleGroupLoads loads = AxleGroup.Independent(weight, x, axles, m, raised);

        (loads.Loads.Sum() + loads.Ball).Should().BeApproximately(weight, 1e-6);
        ((loads.Loads[0] * l1) + (loads.Loads[1] * l2)).Should().BeApproximately((weight * x) + m, 1e-5 * weight, "moments about the coupling");
        loads.Loads.Should().OnlyContain(load => load >= 0, "no axle pulls at the road");
    }

    [Property]
    public void A_nose_high_trailer_moves_load_to_the_rear_axle(int mass, int rise)
    {
        double weight = Between(mass, 1000, 3500) * Constants.Gravity;
        SprungAxle[] axles = [new(4.6, 90e3), new(5.4, 90e3)];
        AxleGroupLoads level = AxleGroup.Independent(weight, 4.4, axles), high = AxleGroup.Independent(weight, 4.4, axles, 0, Between(rise, 0.001, 0.03));
        high.Loads[1].Should().BeGreaterThan(level.Loads[1]);
        high.Loads[0].Should().BeLessThan(level.Loads[0]);
    }

    [Property]
    public void Axles_close_together_carry_as_one(int mass, int centre)
    {
        double weight = Between(mass, 500, 3500) * Constants.Gravity, x = Between(centre, 4, 5);
        AxleGroupLoads pair = AxleGroup.Independent(weight, x, [new(5 - 1e-6, 60e3), new(5 + 1e-6, 60e3)]);
        pair.Loads.Sum().Should().BeApproximately(weight * x / 5, 1e-3);
        AxleGroup.EquivalentOfIndependent([new(5 - 1e-6, 60e3), new(5 + 1e-6, 60e3)]).Should().BeApproximately(5, 1e-6);
    }

    [Property]
    public void The_equivalent_axle_puts_the_same_load_on_the_ball(int mass, int centre, int apart, int stiffer)
    {
        double weight = Between(mass, 500, 3500) * Constants.Gravity, x = Between(centre, 3.5, 4.4), half = Between(apart, 0.2, 0.6);
        SprungAxle[] axles = [new(5 - half, 50e3), new(5 + half, 50e3 * Between(stiffer, 0.5, 2))];
        double one = AxleGroup.EquivalentOfIndependent(axles);
        AxleGroup.Independent(weight, x, axles).Ball.Should().BeApproximately(weight * (one - x) / one, 1e-6 * weight);
    }

    [Property]
    public void Loads_of_items_do_not_depend_on_the_order_or_on_how_they_are_split(int mass, int place, int other)
    {
        double m = Between(mass, 1, 500), x = Between(place, -1, 6), y = Between(other, -1, 6);
        TrailerLoad whole = TrailerStatics.FromItems([new(m, x), new(80, y)], 5), split = TrailerStatics.FromItems([new(80, y), new(m / 2, x), new(m / 2, x)], 5);
        split.Mass.Should().BeApproximately(whole.Mass, 1e-9);
        split.TongueMass.Should().BeApproximately(whole.TongueMass, 1e-9);
    }

    [Property]
    public void A_load_moved_ahead_goes_to_the_tongue(int mass, int place, int ahead)
    {
        double m = Between(mass, 1, 500), x = Between(place, 0, 6), d = Between(ahead, 0.01, 2);
        TrailerLoad before = TrailerStatics.FromItems([new(1000, 4.5), new(m, x)], 5), after = TrailerStatics.FromItems([new(1000, 4.5), new(m, x - d)], 5);
        (after.TongueMass - before.TongueMass).Should().BeApproximately(m * d / 5, 1e-9);
    }

    [Property]
    public void Receiver_moments_balance_about_the_ball(int ball, int couple, int toRear, int apart, int pull)
    {
        double v = Between(ball, -500, 4000), m = Between(couple, 0, 4000), c = Between(toRear, 0.1, 0.6), d = Between(apart, 0.2, 0.8), x = Between(pull, -5000, 5000);
        ReceiverForces forces = Receiver.Forces(v, m, c, d, x, 0.12);
        // The forward line lies c + d ahead of the ball, the rear one c; both push down on the chassis where positive.
        ((forces.Rear * c) + (forces.Forward * (c + d))).Should().BeApproximately(m + (x * 0.12), 1e-6 * (1 + m + Math.Abs(x)));
    }

    [Property]
    public void A_softer_rear_axle_sinks_the_ball_further(int front, int rear, int load)
    {
        double f = Between(front, 30e3, 60e3), r = Between(rear, 30e3, 80e3), v = Between(load, 500, 4000);
        AxleLoads change = new(-v * 1.2 / 3, v * 4.2 / 3);
        Attitude stiff = Attitude.FromLoads(change, f, r, 3, 1.2), soft = Attitude.FromLoads(change, f, r * 0.9, 3, 1.2), levelled = Attitude.FromLoads(change, f, r, 3, 1.2, true);
        soft.BallDrop.Should().BeGreaterThan(stiff.BallDrop);
        levelled.BallDrop.Should().BeLessThan(stiff.BallDrop);
    }
}

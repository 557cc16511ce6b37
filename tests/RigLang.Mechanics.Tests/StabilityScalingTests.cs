using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.LateralRigs;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

/// <summary>Scaling, conservation and limits of the lateral model and of rollover.</summary>
public sealed class StabilityScalingTests
{
    [Property]
    public void Twice_the_masses_on_twice_as_stiff_tyres_swing_alike(int a, int b, int c, int d, int scale)
    {
        LateralRig rig = Any(a, b, c, d);
        double k = Between(scale, 0.5, 3);
        LateralRig scaled = rig with
        {
            VehicleMass = k * rig.VehicleMass, VehicleInertia = k * rig.VehicleInertia, TrailerMass = k * rig.TrailerMass, TrailerInertia = k * rig.TrailerInertia,
            FrontStiffness = k * rig.FrontStiffness, RearStiffness = k * rig.RearStiffness, TrailerStiffness = k * rig.TrailerStiffness,
        };
        SingleTrackModel.Modes(scaled, 25).SwingDamping.Should().BeApproximately(SingleTrackModel.Modes(rig, 25).SwingDamping, 1e-9);
        Understeer.Of(scaled).Should().BeApproximately(Understeer.Of(rig), 1e-12);
    }

    [Property]
    public void A_model_of_another_size_swings_alike_at_the_speed_that_belongs_to_it(int a, int b, int c, int d, int scale)
    {
        // Lengths k, time the same: speed k, stiffness k (force k for the same slip), inertia k².
        LateralRig rig = Any(a, b, c, d);
        double k = Between(scale, 0.3, 2);
        LateralRig scaled = rig with
        {
            ToFront = k * rig.ToFront, ToRear = k * rig.ToRear, ToBall = k * rig.ToBall, TrailerMassCentre = k * rig.TrailerMassCentre, TrailerAxle = k * rig.TrailerAxle,
            VehicleInertia = k * k * rig.VehicleInertia, TrailerInertia = k * k * rig.TrailerInertia,
            FrontStiffness = k * rig.FrontStiffness, RearStiffness = k * rig.RearStiffness, TrailerStiffness = k * rig.TrailerStiffness,
        };
        SingleTrackModel.Modes(scaled, k * 25).SwingDamping.Should().BeApproximately(SingleTrackModel.Modes(rig, 25).SwingDamping, 1e-9);
    }

    [Property]
    public void The_sum_of_the_eigenvalues_is_the_trace(int a, int b, int c, int d, int v)
    {
        LateralRig rig = Any(a, b, c, d);
        double speed = Between(v, 5, 45);
        double[] system = SingleTrackModel.System(rig, speed);
        SingleTrackModel.Modes(rig, speed).Eigenvalues.Sum(value => value.Real).Should().BeApproximately(system[0] + system[5] + system[10] + system[15], 1e-7);
    }

    [Property]
    public void A_found_snaking_speed_parts_swings_that_die_from_swings_that_grow(int a, int b, int c, int d)
    {
        LateralRig rig = Any(a, b, c, d);
        SearchResult found = CriticalSpeed.Snaking(rig, 70);
        if (found.Outcome == SearchOutcome.None || double.IsNaN(found.First))
            return;
        SingleTrackModel.Modes(rig, found.First * 0.995).SwingDamping.Should().BePositive();
        SingleTrackModel.Modes(rig, found.First * 1.005).SwingDamping.Should().BeNegative();
    }

    [Property]
    public void A_friction_head_helps_a_small_swing_more(int torque, int frequency, int amplitude)
    {
        double m = Between(torque, 20, 500), w = Between(frequency, 2, 6), small = Between(amplitude, 0.005, 0.05);
        FrictionDamper.Equivalent(m, w, small).Should().BeApproximately(2 * FrictionDamper.Equivalent(m, w, 2 * small), 1e-9 * m / small);
        // The same energy in a swing: 4 M A of friction, π c ω A² of a damper.
        (Math.PI * FrictionDamper.Equivalent(m, w, small) * w * small * small).Should().BeApproximately(4 * m * small, 1e-9);
    }

    [Property]
    public void Wider_and_lower_tips_later(int track, int height, int aside)
    {
        double t = Between(track, 1.3, 2.2), h = Between(height, 0.4, 1.6), off = Between(aside, 0, 0.2), factor = Rollover.StabilityFactor(t, h, off);
        Rollover.StabilityFactor(t + 0.1, h, off).Should().BeGreaterThan(factor);
        Rollover.StabilityFactor(t, h + 0.1, off).Should().BeLessThan(factor);
        Rollover.StabilityFactor(t, h, -off).Should().BeApproximately(factor, 1e-12, "it tips on the nearer side, whichever that is");
        Rollover.StabilityFactor(2 * t, 2 * h, 2 * off).Should().BeApproximately(factor, 1e-12);
    }

    [Property]
    public void The_speed_of_a_curve_gives_its_acceleration_back(int acceleration, int radius)
    {
        double a = Between(acceleration, 0.1, 9), r = Between(radius, 10, 900);
        Rollover.LateralAcceleration(Rollover.CurveSpeed(a, r), r).Should().BeApproximately(a, 1e-9);
    }
}

using System.Numerics;
using static RigLang.Mechanics.Tests.LateralRigs;

namespace RigLang.Mechanics.Tests;

/// <summary>Regression values of the lateral model; not outside checks.</summary>
public sealed class StabilityTests
{
    [Fact]
    public void Matrices_at_25_metres_per_second()
    {
        SingleTrackModel.Inertia(Snaking).Should().Equal(
            [3000, -8960, -5390, 0, -3570, 25448, 13744.5, 0, -5390, 38096, 24351.5, 0, 0, 0, 0, 1], (x, y) => Math.Abs(x - y) < 1e-8);
        SingleTrackModel.Forces(Snaking, 25).Should().Equal(
            [-14000, -47700, 14400, 90000, 12900, 9285, -36720, -229500, 14400, 40430, -57600, -360000, 0, 0, 1, 0], (x, y) => Math.Abs(x - y) < 1e-8);
    }

    [Fact]
    public void Characteristic_polynomial()
    {
        (double p3, double p2, double p1, double p0) = SymmetricFunctions.Polynomial(Snaking, 25);
        p3.Should().BeApproximately(13.10299312, 1e-8);
        p2.Should().BeApproximately(68.6975134, 1e-7);
        p1.Should().BeApproximately(207.73439246, 1e-8);
        p0.Should().BeApproximately(671.76664925, 1e-8);
    }

    [Theory]
    [InlineData(20, -7.462682, 2.671637, -0.726689, 3.725813, 0.191435)]
    [InlineData(25, -6.249329, 2.780589, -0.302168, 3.777174, 0.079744)]
    [InlineData(30, -5.463765, 2.861863, 0.004184, 3.784536, -0.001106)]
    public void Eigenvalues_of_the_snaking_rig(double speed, double real1, double imaginary1, double real2, double imaginary2, double damping)
    {
        LateralModes modes = SingleTrackModel.Modes(Snaking, speed);
        Near(modes.Eigenvalues[0], real2, imaginary2);
        Near(modes.Eigenvalues[2], real1, imaginary1);
        modes.Damping.Should().BeApproximately(damping, 6e-7);
        modes.SwingDamping.Should().Be(modes.Damping);
    }

    [Fact]
    public void Eigenvalues_of_the_oversteering_rig()
    {
        LateralModes modes = SingleTrackModel.Modes(Oversteering, 25);
        Near(modes.Eigenvalues[0], -1.289594, 3.572902);
        modes.Eigenvalues.Select(value => value.Real).Should().Contain(real => Math.Abs(real + 7.071763) < 1e-6);
        modes.Eigenvalues.Select(value => value.Real).Should().Contain(real => Math.Abs(real + 2.920597) < 1e-6);
        modes.Damping.Should().BeApproximately(0.33950, 6e-6);
        SingleTrackModel.Modes(Oversteering, 27.7778).SwingDamping.Should().BeApproximately(0.30195, 6e-6);
        SingleTrackModel.Modes(Oversteering, 27.7778).SwingFrequency.Should().BeApproximately(3.7783, 6e-5);
    }

    [Fact]
    public void Critical_speeds()
    {
        CriticalSpeed.Snaking(Snaking, 60).First.Should().BeApproximately(29.9211, 6e-5);
        CriticalSpeed.Snaking(Snaking, 25).Outcome.Should().Be(SearchOutcome.None);
        double understeer = Understeer.Of(Oversteering);
        Understeer.DegreesPerG(understeer).Should().BeApproximately(-0.434, 0.0006);
        CriticalSpeed.Divergence(Oversteering.Wheelbase, understeer).Should().BeApproximately(61.3051, 6e-5);
        Understeer.DegreesPerG(Understeer.Of(Snaking)).Should().BeApproximately(1.500, 0.0006);
        CriticalSpeed.Divergence(Snaking.Wheelbase, Understeer.Of(Snaking)).Should().Be(double.NaN, "an understeering vehicle does not turn away");
    }

    [Theory]
    [InlineData(0.01, 99.17, -0.0037)]
    [InlineData(0.06, 116.97, 0.0644)]
    [InlineData(0.10, 144.10, 0.1305)]
    [InlineData(0.12, 170.57, 0.1678)]
    public void More_tongue_is_steadier(double tongue, double critical, double damping) =>
        Check(Snaking with { TrailerMassCentre = Snaking.TrailerAxle * (1 - tongue) }, critical, damping);

    [Fact]
    public void One_change_at_a_time()
    {
        Check(Snaking with { TrailerMass = 1000 }, 113.28, 0.0553);
        Check(Snaking with { TrailerMass = 1000, TrailerInertia = 3600.0 * 1000 / 1400 }, 137.38, 0.1290);
        Check(Snaking with { TrailerMassCentre = 3.85 * 0.9, TrailerAxle = 3.6 }, 93.24, -0.0309);
        Check(Snaking with { TrailerInertia = 2400 }, 140.73, 0.1257);
        Check(Snaking with { TrailerInertia = 5000 }, 89.39, -0.0531);
        Check(Snaking with { ToBall = 2.80 }, 101.61, 0.0071);
        Check(Snaking with { TrailerStiffness = 70_000 }, 102.79, 0.0115);
        Check(Snaking with { TrailerStiffness = 110_000 }, 112.69, 0.0524);
        Check(Snaking with { HitchDamping = 1000 }, 114.86, 0.0594);
        Check(Snaking with { RearStiffness = 120_000 }, 98.38, -0.0072);
    }

    [Theory]
    [InlineData(20, 0.501385)]
    [InlineData(25, 0.401108)]
    [InlineData(30, 0.334256)]
    public void A_ball_held_fast_leaves_a_trailer_on_a_spring(double speed, double damping)
    {
        // Closed form: ω² = C l2/(I + m l1²), ζ = C l2²/(2 u √((I + m l1²) C l2)).
        LateralRig heavy = Oversteering with { VehicleMass = 1e9, VehicleInertia = 1e9, FrontStiffness = 1e12, RearStiffness = 1e12 };
        double inertia = 4500 + (1800 * 4.5 * 4.5), spring = 140_000 * 4.9;
        Math.Sqrt(spring / inertia).Should().BeApproximately(4.092937, 6e-7);
        LateralModes modes = SingleTrackModel.Modes(heavy, speed);
        modes.SwingFrequency.Should().BeApproximately(4.092937, 1e-5);
        modes.SwingDamping.Should().BeApproximately(damping, 1e-5);
        (140_000 * 4.9 * 4.9 / speed / 2 / Math.Sqrt(inertia * spring)).Should().BeApproximately(damping, 6e-7);
    }

    [Theory]
    [InlineData(0.02, 1.064861)]
    [InlineData(0.05, 1.170319)]
    [InlineData(0.10, 1.371276)]
    [InlineData(0.15, 1.610640)]
    [InlineData(0.20, 1.898900)]
    [InlineData(0.30, 2.685818)]
    public void Half_swing_ratios_and_damping(double damping, double ratio)
    {
        OscillationDecay.HalfSwingRatio(damping).Should().BeApproximately(ratio, 6e-7);
        OscillationDecay.FromHalfSwings(ratio).Should().BeApproximately(damping, 1e-6);
        OscillationDecay.FromWholeSwings(ratio * ratio).Should().BeApproximately(damping, 1e-6);
    }

    [Fact]
    public void Counting_every_extreme_as_a_whole_swing_halves_the_damping() =>
        OscillationDecay.FromWholeSwings(OscillationDecay.HalfSwingRatio(0.1)).Should().BeApproximately(0.05, 0.0005);

    [Theory]
    [InlineData(80 / 3.6)]
    [InlineData(90 / 3.6)]
    [InlineData(100 / 3.6)]
    [InlineData(115 / 3.6)]
    public void A_driven_pulse_shows_the_damping_of_the_eigenvalues(double speed)
    {
        PulseResponse response = SteerPulse.Drive(Snaking, speed);
        OscillationDecay.Of(response.Articulation, response.PulseEnd + 100).Should().BeApproximately(SingleTrackModel.Modes(Snaking, speed).Damping, 0.002);
    }

    [Fact]
    public void A_line_through_damping_beyond_the_speeds_driven_says_that_it_guesses()
    {
        double[] speeds = [80, 90, 100], dampings = [0.136842, 0.079744, 0.031949];
        foreach ((double speed, double damping) in speeds.Zip(dampings))
            SingleTrackModel.Modes(Snaking, speed / 3.6).Damping.Should().BeApproximately(damping, 6e-7);
        StraightLine line = StraightLine.Fit(speeds, dampings);
        line.Place(0).Should().BeApproximately(105.80, 0.006);
        line.IsExtrapolated(line.Place(0)).Should().BeTrue();
        line.IsExtrapolated(95).Should().BeFalse();
    }

    [Theory]
    [InlineData(0.5, 2304.6)]
    [InlineData(1, 1152.3)]
    [InlineData(2, 576.2)]
    [InlineData(4, 288.1)]
    public void Friction_damps_small_swings_most(double degrees, double equivalent) =>
        FrictionDamper.Equivalent(60, 3.7985, degrees * Math.PI / 180).Should().BeApproximately(equivalent, 0.06);

    [Fact]
    public void Friction_at_the_ball_steadies_the_rig_at_its_own_frequency()
    {
        LateralRig damped = FrictionDamper.Apply(Snaking, 25, 60, 2 * Math.PI / 180);
        damped.HitchDamping.Should().BeApproximately(
            FrictionDamper.Equivalent(60, SingleTrackModel.Modes(damped, 25).SwingFrequency, 2 * Math.PI / 180), 0.5);
        SingleTrackModel.Modes(damped, 25).Damping.Should().BeGreaterThan(SingleTrackModel.Modes(Snaking, 25).Damping);
    }

    [Fact]
    public void Yaw_inertia_of_a_box_and_of_a_box_with_loads_at_its_ends()
    {
        YawInertia.Box(1800, 6.0, 2.3).Should().BeApproximately(6193.5, 1e-9);
        YawInertia.With(6193.5, new PointMass(1800, 5), [new(50, 2.5), new(50, 7.5)]).Should().BeApproximately(6193.5 + (100 * 2.5 * 2.5), 1e-9);
    }

    [Fact]
    public void Rollover_values()
    {
        Rollover.StabilityFactor(1.75, 1.10).Should().BeApproximately(0.795, 0.0006);
        Rollover.CrashRisk(1.45, false).Should().BeApproximately(0.1006, 6e-5);
        Rollover.CrashRisk(1.25, false).Should().BeApproximately(0.1595, 6e-5);
        Rollover.CrashRisk(1.13, false).Should().BeApproximately(0.2366, 6e-5);
        Rollover.CrashRisk(1.04, false).Should().BeApproximately(0.3563, 6e-5);
        Rollover.CrashRisk(0.9, false).Should().Be(double.NaN);
        Rollover.StabilityFactor(1.75, 1.10, 0.05).Should().BeLessThan(Rollover.StabilityFactor(1.75, 1.10));
    }

    [Fact]
    public void Outside_its_domain_the_model_computes_nothing()
    {
        foreach (LateralRig rig in (LateralRig[])[Snaking with { TrailerMass = 0 }, Snaking with { TrailerInertia = double.NaN }, Snaking with { RearStiffness = -1 }])
        {
            SingleTrackModel.Modes(rig, 25).Damping.Should().Be(double.NaN);
            CriticalSpeed.Snaking(rig, 60).Outcome.Should().Be(SearchOutcome.NotComputable);
            SteerPulse.Drive(rig, 25).Articulation.Should().BeEmpty();
            OscillationDecay.Of(SteerPulse.Drive(rig, 25).Articulation, 100).Should().Be(double.NaN);
        }

        SingleTrackModel.Modes(Snaking, 0).Damping.Should().Be(double.NaN);
        SingleTrackModel.Modes(Snaking, double.NaN).SwingFrequency.Should().Be(double.NaN);
        FrictionDamper.Apply(Snaking, 25, double.NaN, 0.02).IsComputable.Should().BeFalse();
    }

    private static void Check(LateralRig rig, double critical, double damping)
    {
        (CriticalSpeed.Snaking(rig, 80).First * 3.6).Should().BeApproximately(critical, 0.006);
        SingleTrackModel.Modes(rig, 100 / 3.6).Damping.Should().BeApproximately(damping, 6e-5);
    }

    private static void Near(Complex value, double real, double imaginary)
    {
        value.Real.Should().BeApproximately(real, 1e-6);
        value.Imaginary.Should().BeApproximately(imaginary, 1e-6);
    }
}

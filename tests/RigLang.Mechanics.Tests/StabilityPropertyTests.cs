using System.Numerics;
using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.LateralRigs;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

public sealed class StabilityPropertyTests
{
    [Property]
    public void Two_formulations_have_the_same_eigenvalues(int a, int b, int c, int d, int v)
    {
        LateralRig rig = Any(a, b, c, d) with { HitchDamping = Between(v, 0, 1500) };
        double speed = Between(v, 5, 45);
        foreach (Complex value in SingleTrackModel.Modes(rig, speed).Eigenvalues)
            RoadCoordinates.Residue(rig, speed, value).Should().BeLessThan(1e-9);
    }

    [Property]
    public void The_divergence_speed_is_where_a_real_eigenvalue_crosses_zero(int a, int b, int c, int d)
    {
        LateralRig rig = Any(a, b, c, d);
        rig = rig with { RearStiffness = rig.RearStiffness * 0.75 };
        double critical = CriticalSpeed.Divergence(rig.Wheelbase, Understeer.Of(rig));
        if (double.IsNaN(critical) || critical > 100)
            return;
        double Nearest(double speed) => SingleTrackModel.Modes(rig, speed).Eigenvalues.Where(value => value.Imaginary == 0).Select(value => value.Real).DefaultIfEmpty(-9).Max();
        Nearest(critical * 0.99).Should().BeNegative();
        Nearest(critical * 1.01).Should().BePositive();
    }

    [Property]
    public void The_divergence_speed_knows_the_trailer_by_its_tongue_alone(int a, int b, int c, int d, int axle)
    {
        LateralRig rig = Any(a, b, c, d), other = rig with { TrailerInertia = rig.TrailerInertia * 2, TrailerStiffness = rig.TrailerStiffness * 0.6, HitchDamping = 900 };
        double longer = Between(axle, 3, 8), share = rig.TrailerMassCentre / rig.TrailerAxle;
        other = other with { TrailerAxle = longer, TrailerMassCentre = longer * share };
        Understeer.Of(other).Should().BeApproximately(Understeer.Of(rig), 1e-12);
    }

    [Property]
    public void A_vanishing_trailer_leaves_the_vehicle_alone(int a, int b, int c, int v)
    {
        double speed = Between(v, 10, 40);
        LateralRig rig = Any(a, b, c, 0) with { TrailerMass = 1e-6, TrailerInertia = 1e-6, TrailerStiffness = 1e-4 };
        double m = rig.VehicleMass, i = rig.VehicleInertia, cf = rig.FrontStiffness, cr = rig.RearStiffness;
        double turning = (rig.ToFront * cf) - (rig.ToRear * cr), spin = (rig.ToFront * rig.ToFront * cf) + (rig.ToRear * rig.ToRear * cr);
        double trace = -((cf + cr) / (m * speed)) - (spin / (i * speed));
        double determinant = ((cf + cr) / (m * speed) * spin / (i * speed)) - ((speed + (turning / (m * speed))) * turning / (i * speed));
        Complex root = Complex.Sqrt((trace * trace / 4) - determinant);
        foreach (Complex solo in (Complex[])[(trace / 2) + root, (trace / 2) - root])
            SingleTrackModel.Modes(rig, speed).Eigenvalues.Min(value => (value - solo).Magnitude).Should().BeLessThan(1e-4 * (1 + solo.Magnitude));
    }

    // Published trends: IMechE paper C132/83 (abstract) and Darling, Tilley and Gao, Proc. IMechE D 223 (2009), abstract.
    [Property]
    public void The_published_trends_hold_where_a_rig_swings(int a, int b, int c, int d)
    {
        LateralRig rig = Any(a, b, c, d);
        rig = rig with { TrailerInertia = rig.TrailerInertia * 1.8, TrailerMassCentre = rig.TrailerAxle * 0.96 };
        double before = Damping(rig);
        // Near the edge of stability, where the statements are about; a rig that swings wildly at this speed does not exist.
        if (!(before is > -0.2 and < 0.35))
            return;
        Damping(rig with { TrailerInertia = rig.TrailerInertia * 0.9 }).Should().BeGreaterThan(before, "less yaw inertia of the trailer");
        Damping(rig with { HitchDamping = 300 }).Should().BeGreaterThan(before, "a damper at the ball");
        Damping(rig with { ToBall = rig.ToBall - 0.1 }).Should().BeGreaterThan(before, "a shorter overhang");
        Damping(rig with { TrailerMassCentre = rig.TrailerAxle * 0.94 }).Should().BeGreaterThan(before, "more tongue");
        Damping(rig with { TrailerStiffness = rig.TrailerStiffness * 1.1 }).Should().BeGreaterThan(before, "stiffer trailer tyres");
    }

    // IMechE paper C132/83, abstract: a long wheelbase of the car steadies. The car's own inertia and axle shares are kept, and the ball stays as far behind the axle.
    [Property]
    public void A_longer_wheelbase_steadies_a_rig_that_swings(int a, int b, int c, int d)
    {
        LateralRig rig = Any(a, b, c, d);
        rig = rig with { TrailerInertia = rig.TrailerInertia * 1.8, TrailerMassCentre = rig.TrailerAxle * 0.96 };
        double before = Damping(rig);
        if (!(before is > -0.2 and < 0.35))
            return;
        double overhang = rig.ToBall - rig.ToRear;
        LateralRig longer = rig with { ToFront = rig.ToFront * 1.1, ToRear = rig.ToRear * 1.1, ToBall = (rig.ToRear * 1.1) + overhang };
        Damping(longer).Should().BeGreaterThan(before);
    }

    // Where a swing is the least damped motion and dies slowly enough to be counted; a motion as quick as the pulse hides it.
    [Property]
    public void A_driven_pulse_shows_the_damping_of_the_eigenvalues_over_random_rigs(int a, int b, int c, int d, int v)
    {
        LateralRig rig = Any(a, b, c, d);
        rig = rig with { TrailerInertia = rig.TrailerInertia * 1.8, TrailerMassCentre = rig.TrailerAxle * 0.96 };
        double speed = Between(v, 18, 32);
        LateralModes modes = SingleTrackModel.Modes(rig, speed);
        if (!(modes.Damping is > 0.01 and < 0.15) || modes.Damping != modes.SwingDamping)
            return;
        PulseResponse response = SteerPulse.Drive(rig, speed);
        OscillationDecay.Of(response.Articulation, response.PulseEnd + 200).Should().BeApproximately(modes.Damping, 0.01);
    }

    [Fact]
    public void The_properties_above_are_about_more_than_a_handful_of_rigs()
    {
        var random = new Random(5);
        int near = 0, swinging = 0;
        for (int i = 0; i < 400; i++)
        {
            LateralRig rig = Any(random.Next(), random.Next(), random.Next(), random.Next());
            rig = rig with { TrailerInertia = rig.TrailerInertia * 1.8, TrailerMassCentre = rig.TrailerAxle * 0.96 };
            near += Damping(rig) is > -0.2 and < 0.35 ? 1 : 0;
            swinging += SingleTrackModel.Modes(rig, 25) is var modes && modes.Damping is > 0.01 and < 0.15 && modes.Damping == modes.SwingDamping ? 1 : 0;
        }

        near.Should().BeGreaterThan(100);
        swinging.Should().BeGreaterThan(20);
    }

    [Fact]
    public void The_trailers_mass_alone_matters_little_and_its_yaw_inertia_much()
    {
        double light = CriticalSpeed.Snaking(Snaking with { TrailerMass = 1000 }, 80).First, heavy = CriticalSpeed.Snaking(Snaking with { TrailerMass = 1800 }, 80).First;
        double slim = CriticalSpeed.Snaking(Snaking with { TrailerInertia = 2400 }, 80).First, wide = CriticalSpeed.Snaking(Snaking with { TrailerInertia = 5000 }, 80).First;
        (Math.Abs(light - heavy) / light).Should().BeLessThan(0.10);
        (Math.Abs(slim - wide) / slim).Should().BeGreaterThan(0.30);
    }

    [Property]
    public void Restoration_brings_load_and_stiffness_back_to_the_front(int tongue, int share)
    {
        double q = Between(share, 0.1, 1);
        TowGeometry vehicle = ReferenceRig.Vehicle;
        TrailerLoad trailer = ReferenceRig.Trailer with { TongueMass = Between(tongue, 100, 350) };
        CoupledLoads slack = Hitch.Couple(vehicle, trailer), set = Hitch.Couple(vehicle, trailer, Hitch.CoupleForRestoration(vehicle, trailer, q));
        double Gradient(CoupledLoads loads) => Understeer.Coupled(2400, 3.0 * 1150 / 2400, 3.0 * 1250 / 2400, 1.2, trailer.TongueMass,
            CorneringStiffness.OfAxle(loads.Front, 16_000, 12), CorneringStiffness.OfAxle(loads.Rear, 17_000, 12));
        // A front axle with more load and more grip turns in more readily: less understeer than with slack bars.
        Gradient(set).Should().BeLessThan(Gradient(slack));
    }

    [Property]
    public void An_axle_gains_less_stiffness_than_load(int load)
    {
        double n = Between(load, 2000, 15_000);
        double here = CorneringStiffness.OfAxle(n, 16_000, 12), more = CorneringStiffness.OfAxle(n * 1.05, 16_000, 12);
        more.Should().BeGreaterThan(here);
        (more / here).Should().BeLessThan(1.05);
        CorneringStiffness.AtLoad(100_000, n, n, 16_000).Should().BeApproximately(100_000, 1e-6);
    }

    private static double Damping(LateralRig rig) => SingleTrackModel.Modes(rig, 100 / 3.6).SwingDamping;
}

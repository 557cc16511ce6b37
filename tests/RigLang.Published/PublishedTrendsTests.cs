using RigLang.Mechanics;

namespace RigLang.Published;

/// <summary>Statements of the literature about stability that have no number, held in sign on one rig that swings.</summary>
public sealed class PublishedTrendsTests
{
    private static LateralRig Rig { get; } = new()
    {
        VehicleMass = 1600, VehicleInertia = 2600, ToFront = 1.20, ToRear = 1.50, ToBall = 2.55, TrailerMass = 1400, TrailerInertia = 3600,
        TrailerMassCentre = 3.85, TrailerAxle = 4.00, FrontStiffness = 110_000, RearStiffness = 150_000, TrailerStiffness = 90_000,
    };

    /// <summary>
    /// IMechE paper C132/83, abstract (read): steadier with low yaw inertia, adequate drawbar, short overhang, long wheelbase, stiff trailer tyres, a hitch
    /// damper.
    /// </summary>
    [Fact]
    public void What_makes_a_caravan_steadier()
    {
        double before = Damping(Rig);
        Damping(Rig with { TrailerInertia = 3000 }).Should().BeGreaterThan(before);
        Damping(Rig with { TrailerMassCentre = 4.235, TrailerAxle = 4.40 }).Should().BeGreaterThan(before, "a longer drawbar at the same tongue share");
        Damping(Rig with { ToBall = 2.35 }).Should().BeGreaterThan(before);
        Damping(Rig with { ToFront = 1.33, ToRear = 1.67, ToBall = 2.72, VehicleInertia = 2600 }).Should().BeGreaterThan(before, "a longer wheelbase with the same overhang");
        Damping(Rig with { TrailerStiffness = 100_000 }).Should().BeGreaterThan(before);
        Damping(Rig with { HitchDamping = 500 }).Should().BeGreaterThan(before);
    }

    /// <summary>
    /// Darling, Tilley and Gao, Proc. IMechE D 223 (2009), abstract (read): yaw inertia, nose mass and axle position dominate; mass alone has little effect.
    /// </summary>
    [Fact]
    public void What_dominates()
    {
        double before = Critical(Rig);
        double byMass = Math.Abs(Critical(Rig with { TrailerMass = 1400 * 1.2 }) - before);
        Math.Abs(Critical(Rig with { TrailerInertia = 3600 * 1.2 }) - before).Should().BeGreaterThan(2 * byMass);
        Math.Abs(Critical(Rig with { TrailerMassCentre = 4.00 * (1 - (0.0375 * 2)) }) - before).Should().BeGreaterThan(2 * byMass);
    }

    /// <summary>
    /// Hac, Fulk and Chen, SAE 2008-01-1228, introduction (read): divergence depends on the tow vehicle and the hitch load alone, and less hitch load is
    /// better.
    /// </summary>
    [Fact]
    public void Divergence_depends_on_the_tow_vehicle_and_the_hitch_load()
    {
        LateralRig rig = Rig with { RearStiffness = 80_000 };
        Divergence(rig with { TrailerInertia = 9000, TrailerStiffness = 50_000 }).Should().Be(Divergence(rig));
        Divergence(rig with { TrailerMassCentre = 3.95 }).Should().BeGreaterThan(Divergence(rig));
    }

    /// <summary>Zhang et al., Procedia IUTAM 22 (2017), abstract (read): critical speeds of car and trailer are typically about 100 km/h.</summary>
    [Fact]
    public void Critical_speeds_lie_about_a_hundred() => (Critical(Rig) * 3.6).Should().BeInRange(70, 150);

    private static double Damping(LateralRig rig) => SingleTrackModel.Modes(rig, 100 / 3.6).SwingDamping;

    private static double Critical(LateralRig rig) => CriticalSpeed.Snaking(rig, 90).First;

    private static double Divergence(LateralRig rig) => CriticalSpeed.Divergence(rig.Wheelbase, Understeer.Of(rig));
}

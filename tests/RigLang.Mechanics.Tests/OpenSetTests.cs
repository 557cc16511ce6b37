namespace RigLang.Mechanics.Tests;

/// <summary>Parameters from open multibody samples (B. P. Minaker); results computed by two formulations.</summary>
public sealed class OpenSetTests
{
    private static LateralRig Set(double massCentre) => new()
    {
        VehicleMass = 16975 / 9.81, VehicleInertia = 3508, ToFront = 1.289, ToRear = 1.596, ToBall = 2.7, TrailerMass = 2000, TrailerInertia = 3000,
        TrailerMassCentre = massCentre, TrailerAxle = 3.0, FrontStiffness = 80_000, RearStiffness = 80_000, TrailerStiffness = 80_000,
    };

    [Fact]
    public void Ten_per_cent_on_the_tongue()
    {
        LateralRig rig = Set(2.7);
        Understeer.DegreesPerG(Understeer.Of(rig)).Should().BeApproximately(-1.1869, 6e-5);
        CriticalSpeed.Divergence(rig.Wheelbase, Understeer.Of(rig)).Should().BeApproximately(36.9623, 6e-5);
        CriticalSpeed.Snaking(rig, 120).Outcome.Should().Be(SearchOutcome.None);
        LateralModes modes = SingleTrackModel.Modes(rig, 18);
        modes.SwingDamping.Should().BeApproximately(0.17327, 6e-6);
        modes.Eigenvalues.Select(value => value.Real).Order().Should().Equal([-6.75397, -2.20368, -0.54629, -0.54629], (x, y) => Math.Abs(x - y) < 6e-6);
    }

    [Fact]
    public void Three_per_cent_on_the_tongue()
    {
        LateralRig rig = Set(2.9);
        Understeer.DegreesPerG(Understeer.Of(rig)).Should().BeApproximately(0.4668, 6e-5);
        CriticalSpeed.Snaking(rig, 120).First.Should().BeApproximately(18.4001, 6e-5);
        LateralModes modes = SingleTrackModel.Modes(rig, 18);
        modes.SwingDamping.Should().BeApproximately(0.00920, 6e-6);
        modes.Eigenvalues[0].Imaginary.Should().BeApproximately(2.96393, 6e-6);
    }
}

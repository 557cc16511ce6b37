using RigLang.Mechanics;

namespace RigLang.Published;

/// <summary>Facts of the trade about hitches that follow from statics alone (common practice).</summary>
public sealed class CommonPracticeHitchTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1000)]
    public void A_mount_reaching_further_forward_lowers_the_force_at_each_fastening(double couple)
    {
        var rear = new List<double>();
        var forward = new List<double>();
        foreach (double reach in (double[])[0.3, 0.6, 0.9, 1.5, 2.5])
        {
            ReceiverForces forces = Receiver.Forces(2400, couple, 0.3, reach);
            rear.Add(Math.Abs(forces.Rear));
            forward.Add(Math.Abs(forces.Forward));
        }

        forward.Should().BeInDescendingOrder();
        // With bars set the rear line is pressed the other way and may grow; the statement is about the weight that hangs on the ball.
        if (couple == 0)
            rear.Should().BeInDescendingOrder();
    }

    [Fact]
    public void The_overhangs_share_of_the_wheelbase_says_more_than_the_wheelbase_alone()
    {
        // The same tongue takes the same load from the front axle wherever overhang/wheelbase is the same, and a longer wheelbase with a larger
        // share loses more than a shorter one with a smaller share.
        static double FrontLoss(double wheelbase, double overhang)
        {
            var vehicle = new TowGeometry(new AxleLoads(12000, 11000), wheelbase, overhang);
            return 12000 - Hitch.Couple(vehicle, new TrailerLoad(2500, 300, 5)).Front;
        }

        FrontLoss(2.7, 0.9).Should().BeApproximately(FrontLoss(3.6, 1.2), 1e-9);
        FrontLoss(3.6, 1.6).Should().BeGreaterThan(FrontLoss(2.8, 1.0));
    }
}

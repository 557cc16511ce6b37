namespace RigLang.Analysis.Tests.Loads;

public sealed class TrailerAxleTests
{
    private static string Rig(string suspension, string more = "") => $"""
        vehicle v
            wheelbase 3.0 m
            overhang 1.2 m
            axle front
                carries 1250 kg
            axle rear
                carries 1150 kg
            aboard nothing

        trailer t
            mass 2500 kg
            tongue 313.990 kg
            suspension {suspension}
            axle lead
                behind-coupling 4.60 m
                axle-rating 1300 kg
                ride-rate 100 N/mm
            axle trail
                behind-coupling 5.40 m
                axle-rating 1300 kg
                ride-rate 100 N/mm
            aboard nothing

        rig r
            vehicle v
            trailer t
        {more}
        """;

    [Fact]
    public void Independent_axles_share_by_their_springs()
    {
        // Computed by two formulations: 2500 kg, mass centre 4.40 m, axles 4.60 and 5.40 m, equal rates: 1005.564 and 1180.445 kg, tongue 313.990 kg.
        var axles = Study.Rig(Rig("independent")).TrailerAxles;

        axles[0].Value("axle-load").Should().BeApproximately(1005.564, 0.01);
        axles[1].Value("axle-load").Should().BeApproximately(1180.445, 0.01);
    }

    [Fact]
    public void Equalised_axles_share_equally()
    {
        var axles = Study.Rig(Rig("equalised").Replace("313.990 kg", "300 kg")).TrailerAxles;

        axles.Should().OnlyContain(axle => Math.Abs(axle.Value("axle-load") - 1100) < 1e-9);
    }

    [Fact]
    public void Two_axles_of_unsaid_suspension_are_marked_as_estimated()
    {
        Study.Rig(Rig("equalised")).TrailerAxles[0].Result("axle-load").IsEstimated.Should().BeFalse();
        Study.Rig(Rig("equalised").Replace("    suspension equalised\n", "")).TrailerAxles[0].Result("axle-load").IsEstimated.Should().BeTrue();
    }
}

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
    public void Independent_axles_as_weighed_level_share_by_their_springs()
    {
        // Level, both springs are in by the same length.
        var equal = Study.Rig(Rig("independent")).TrailerAxles;
        var stiffer = Study.Rig(Rig("independent").Replace("5.40 m\n        axle-rating 1300 kg\n        ride-rate 100", "5.40 m\n        axle-rating 1300 kg\n        ride-rate 150")).TrailerAxles;

        equal.Should().OnlyContain(axle => Math.Abs(axle.Value("axle-load") - ((2500 - 313.990) / 2)) < 0.01);
        (stiffer[1].Value("axle-load") / stiffer[0].Value("axle-load")).Should().BeApproximately(1.5, 1e-9);
    }

    [Theory]
    [InlineData("0.42 m", 0)]
    [InlineData("0.48 m", 1)]
    public void A_coupling_carried_high_lightens_the_leading_axle_and_low_the_trailing_one(string level, int lighter)
    {
        // The ball is at 0.45 m, less the few millimetres that it goes down by.
        var axles = OnSprings(level).TrailerAxles;

        axles[lighter].Value("axle-load").Should().BeLessThan(axles[1 - lighter].Value("axle-load"));
    }

    [Fact]
    public void Height_turns_the_frame_on_its_springs()
    {
        // By hand: turned by (rise ÷ the equivalent axle) about the coupling, two springs of 100 N/mm at 4.60 and 5.40 m differ by 100 N/mm × 0.80 m × that.
        var rig = OnSprings("0.42 m");
        var turned = rig.Value("ball-level") / ((4.60 * 4.60 + 5.40 * 5.40) / 10.0);

        (rig.TrailerAxles[0].Value("axle-load") - rig.TrailerAxles[1].Value("axle-load")).Should().BeApproximately(-100_000 * 0.80 * turned / 9.80665, 1);
    }

    [Theory]
    [InlineData("0.42 m")]
    [InlineData("0.48 m")]
    [InlineData("0.60 m")]
    public void Axles_sum_to_what_they_carry_together_at_any_height(string level)
    {
        var rig = OnSprings(level);

        rig.TrailerAxles.Sum(axle => axle.Value("axle-load")).Should().BeApproximately(rig.Value("trailer-axle-load"), 1e-6);
    }

    [Fact]
    public void Taken_as_level_is_marked_as_estimated()
    {
        Study.Rig(Rig("independent")).TrailerAxles[0].Result("axle-load").IsEstimated.Should().BeTrue();
        OnSprings("0.42 m").TrailerAxles[0].Result("axle-load").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void One_known_spring_beside_an_unknown_one_says_nothing()
    {
        var text = Rig("independent");
        var axles = Study.Rig(text.Remove(text.LastIndexOf("        ride-rate 100 N/mm", StringComparison.Ordinal), "        ride-rate 100 N/mm".Length)).TrailerAxles;

        axles[0].Value("axle-load").Should().BeApproximately(axles[1].Value("axle-load"), 1e-6);
        axles[0].Result("axle-load").IsEstimated.Should().BeTrue();
    }

    private static RigLang.Analysis.Studies.RigStudy OnSprings(string level) => Study.Rig(Rig("independent")
        .Replace("    overhang 1.2 m", "    overhang 1.2 m\n    ball-height 0.45 m")
        .Replace("carries 1250 kg", "carries 1250 kg\n        ride-rate 1000 N/mm")
        .Replace("carries 1150 kg", "carries 1150 kg\n        ride-rate 1000 N/mm")
        .Replace("    suspension", $"    coupling-height {level}\n    suspension"));

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

namespace RigLang.Analysis.Tests.Stability;

public sealed class RolloverTests
{
    private static string Rig(string onVehicle = "", string onTrailer = "", string vehicle = "", string trailer = "") => $"""
        vehicle v
            wheelbase 3.00 m
            overhang 1.20 m
            height 1.80 m
            cg-height 0.60 m
        {vehicle}
            axle front
                carries 1250 kg
                track-width 1.62 m
            axle rear
                carries 1150 kg
                track-width 1.58 m
            aboard nothing

        trailer t
            mass 1500 kg
            tongue 100 kg
            coupling-to-axle 5.00 m
            cg-height 1.10 m
            tank fresh 100 L water at axle high 0.40 m
        {trailer}
            axle only
                track-width 1.75 m
            aboard nothing

        load l
            on vehicle
        {onVehicle}
            on trailer
        {onTrailer}

        rig r
            vehicle v
            trailer t
            load l
        """;

    /// <summary>Half the track over the height; a caravan of 1.75 m track and 1.10 m height comes to 0.795 (computed).</summary>
    [Fact]
    public void The_stability_factor_is_half_the_track_over_the_height()
    {
        var rig = Study.Rig(Rig());

        rig.Value("trailer-stability-factor").Should().BeApproximately(0.795, 5e-4);
        rig.Value("vehicle-stability-factor").Should().BeApproximately(0.80 / 0.60, 1e-12);
        rig.Value("trailer-tip-threshold").Should().BeApproximately(0.85 * 0.795, 5e-4);
        rig.Result("vehicle-stability-factor").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void Items_raise_or_lower_the_mass_centre_by_their_moments()
    {
        var rig = Study.Rig(Rig("        item chest 100 kg at 2 m behind front-axle high 1.60 m", "        fill fresh 100 %"));

        rig.Value("vehicle-centre-height").Should().BeApproximately(((2400 * 0.6) + (100 * 1.6)) / 2500, 1e-12);
        rig.Value("trailer-centre-height").Should().BeApproximately(((1500 * 1.1) + (100 * 0.4)) / 1600, 1e-12);
        rig.Result("vehicle-centre-height").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void What_lies_nobody_says_how_high_moves_nothing_and_is_marked()
    {
        var rig = Study.Rig(Rig("        item chest 100 kg at 2 m behind front-axle"));

        rig.Value("vehicle-centre-height").Should().BeApproximately(0.60, 1e-12);
        rig.Result("vehicle-centre-height").IsEstimated.Should().BeTrue();
        rig.Result("trailer-centre-height").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void The_roof_is_as_high_as_the_vehicle()
    {
        var rig = Study.Rig(Rig("        item box 60 kg at 1.5 m behind front-axle on roof"));

        rig.Value("vehicle-centre-height").Should().BeApproximately(((2400 * 0.6) + (60 * 1.8)) / 2460, 1e-12);
        rig.Result("vehicle-centre-height").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void The_lighter_side_does_not_help_the_heavier_one()
    {
        var middle = Study.Rig(Rig(onTrailer: "        item stove 100 kg at axle high 1.10 m"));
        var left = Study.Rig(Rig(onTrailer: "        item stove 100 kg at axle high 1.10 m left 0.80 m"));
        var right = Study.Rig(Rig(onTrailer: "        item stove 100 kg at axle high 1.10 m right 0.80 m"));

        left.Value("trailer-stability-factor").Should().BeApproximately(((1.75 / 2) - (0.80 * 100 / 1600)) / 1.10, 1e-12);
        right.Value("trailer-stability-factor").Should().Be(left.Value("trailer-stability-factor")).And.BeLessThan(middle.Value("trailer-stability-factor"));
    }

    [FsCheck.Xunit.Property(MaxTest = 30)]
    public void The_higher_a_load_the_sooner_it_tips(ushort mass, ushort height)
    {
        double Of(double high) => Study.Rig(Rig(FormattableString.Invariant($"        item chest {20 + (mass % 400)} kg at 2 m behind front-axle high {high} m"))).Value("vehicle-tip-threshold");

        var low = 0.2 + (height % 100 / 100.0);
        Of(low + 0.3).Should().BeLessThan(Of(low));
    }

    [Fact]
    public void Without_a_height_of_the_mass_centre_nothing_is_said()
    {
        Study.Rig(Rig().Replace("    cg-height 1.10 m\n", "")).Result("trailer-stability-factor").Missing!.Words.Should().Be("`cg-height` of trailer t");
        Study.Rig(Rig().Replace("    trailer t\n", "    ")).Result("trailer-stability-factor").Applies.Should().BeFalse();
    }
}

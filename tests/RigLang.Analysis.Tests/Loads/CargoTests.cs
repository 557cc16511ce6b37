namespace RigLang.Analysis.Tests.Loads;

public sealed class CargoTests
{
    private const string Vehicle = """
        vehicle v
            wheelbase 3.0 m
            tank fuel 80 L diesel at 2 m behind front-axle
            axle front
                carries 1000 kg
            axle rear
                carries 800 kg
            aboard
                item driver 90 kg at 1.5 m behind front-axle
                fill fuel 50 %


        """;

    private static double Front(string loadLines, string rigLines = "load l") => Study.Rig(
        Vehicle + "load l\n    on vehicle\n" + string.Concat(loadLines.Split('\n').Select(line => $"        {line}\n")) + $"\nrig r\n    vehicle v\n    {rigLines}\n").Value("front-axle-load");

    [Fact]
    public void The_split_of_four_items_is_the_reference()
    {
        // Computed by two formulations: wheelbase 3.0 m; 60 kg at −0.35, 150 at 1.35, 90 at 2.25, 75 at 3.35 m: 163.25 and 211.75 kg.
        var text = """
            vehicle v
                wheelbase 3.0 m
                axle front
                    carries 1000 kg
                axle rear
                    carries 800 kg
                aboard nothing

            load l
                on vehicle
                    item a 60 kg at 0.35 m ahead of front-axle
                    item b 150 kg at 1.35 m behind front-axle
                    item c 90 kg at 0.75 m ahead of rear-axle
                    item d 75 kg at 0.35 m behind rear-axle

            rig r
                vehicle v
                load l
            """;

        Study.Rig(text).Value("front-axle-load").Should().BeApproximately(1163.25, 1e-9);
        Study.Rig(text).Value("rear-axle-load").Should().BeApproximately(1011.75, 1e-9);
    }

    [Fact]
    public void Who_was_aboard_when_weighed_is_not_counted_twice()
    {
        Front("item driver 90 kg at 1.5 m behind front-axle").Should().BeApproximately(1000, 1e-9);
        Front("item driver 70 kg at 1.5 m behind front-axle").Should().BeApproximately(990, 1e-9);
    }

    [Fact]
    public void Without_a_load_everything_is_as_weighed()
    {
        Front("item driver 70 kg at 1.5 m behind front-axle", "speed 80 km/h").Should().Be(1000);
    }

    [Fact]
    public void A_tank_that_a_load_names_counts_by_the_difference()
    {
        // 40 L more diesel at 0.835 kg/L, a third of it on the front axle.
        Front("item driver 90 kg at 1.5 m behind front-axle\nfill fuel 100 %").Should().BeApproximately(1000 + (40 * 0.835 / 3), 1e-9);
        Front("item driver 90 kg at 1.5 m behind front-axle\nfill fuel 60 L").Should().BeApproximately(1000 + (20 * 0.835 / 3), 1e-9);
    }

    [Fact]
    public void Without_aboard_the_result_is_marked_as_estimated()
    {
        var text = "vehicle v\n    wheelbase 3 m\n    axle front\n        carries 1000 kg\n    axle rear\n        carries 800 kg\n\nrig r\n    vehicle v\n";

        Study.Rig(text).Result("front-axle-load").IsEstimated.Should().BeTrue();
        Study.Rig(text.Replace("\n\nrig", "\n    aboard nothing\n\nrig")).Result("front-axle-load").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void Mass_and_share_stand_for_what_the_axles_carry()
    {
        var rig = Study.Rig("vehicle v\n    wheelbase 2.5 m\n    mass 1200 kg\n    front-share 52 %\n    axle front\n    axle rear\n    aboard nothing\n\nrig r\n    vehicle v\n");

        rig.Value("front-axle-load").Should().BeApproximately(624, 1e-9);
        rig.Value("rear-axle-load").Should().BeApproximately(576, 1e-9);
    }
}

using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Runs;

public sealed class RunTests
{
    private static string Text(string runLines, string vehicleLines = "") => $"""
        vehicle v
            mass 4900 kg
            rolling 0.010
            drag-area 2.6 m²
            aboard nothing
        {string.Join('\n', vehicleLines.Split('\n').Select(line => "    " + line))}

        rig r
            vehicle v
            speed 90 km/h

        run d
            rig r
            date 2026-09-12
            distance 100 km
            speed 90 km/h
            altitude 200 m
            air 15 °C
            wind 0 km/h head
        {string.Join('\n', runLines.Split('\n').Select(line => "    " + line.Trim()))}
        """;

    private const string Electric = """
        electric
            usable-energy 100 kWh
            drive-efficiency 88 %
            regeneration 65 %
            regeneration-power 200 kW
            auxiliary 1.5 kW
        """;

    private static RunStudy Run(string text)
    {
        var analysis = Study.Of(text);
        return analysis.Run(analysis.Workspace.Find(Study.File, DeclarationKind.Run, "d")!)!;
    }

    [Fact]
    public void The_model_of_a_level_run_is_the_reference_leg()
    {
        // Computed by two formulations: 4900 kg, C_rr 0.010, C_dA 2.6 m², density 1.2 kg/m³, 90 km/h, efficiency 0.88, 1.5 kW: 476.11 Wh/km.
        // The density of 1.2 lies at about 200 m and 15 °C, to 0.4 %.
        var run = Run(Text("climb 0 m\nused 47.6 kWh", Electric));

        (run.Value("run-energy-model") / 3600 / 100).Should().BeApproximately(476.11, 2.0);
        run.Value("model-gap").Should().BeApproximately(0, 0.005);
    }

    [Fact]
    public void A_climb_costs_what_it_lifts()
    {
        // +500 m cost 7.584 kWh more, computed by two formulations in air of one density: here both have their mean at 200 m and 15 °C.
        var level = Run(Text("climb 0 m\nused 47 kWh", Electric)).Value("run-energy-model");
        var hilly = Run(Text("climb 500 m\ndescent 0 m\nused 55 kWh", Electric).Replace("altitude 200 m", "altitude -50 m").Replace("air 15 °C", "air 16.6 °C")).Value("run-energy-model");

        ((hilly - level) / 3.6e6).Should().BeApproximately(7.584, 0.03);
    }

    [Fact]
    public void Charges_before_and_after_stand_for_what_was_used()
    {
        Run(Text("climb 0 m\ncharge-before 92 %\ncharge-after 60 %", Electric)).Value("run-energy").Should().BeApproximately(32 * 3.6e6, 1);
    }

    [Fact]
    public void Without_its_climb_the_gap_is_not_computed_and_says_why()
    {
        Run(Text("used 30 kWh", Electric)).Result("model-gap").Missing!.Words.Should().Be("`climb` of run d");
    }

    [Fact]
    public void A_moving_time_gives_the_speed()
    {
        var text = Text("climb 0 m\nused 47 kWh", Electric);

        Run(text.Replace("    rig r\n    date 2026-09-12\n    distance 100 km\n    speed 90 km/h", "    rig r\n    date 2026-09-12\n    distance 100 km\n    moving-time 66 min 40 s"))
            .Value("run-energy-model").Should().BeApproximately(Run(text).Value("run-energy-model"), 1);
    }

    [Theory]
    [InlineData("climb 0 m\nused 60 kWh", "model-off-run")]
    [InlineData("used 47 kWh", "run-incomplete")]
    [InlineData("climb 0 m\nused 47.6 kWh\nused-wall 40 kWh", "wall-below-use")]
    [InlineData("climb 0 m\nused 12 L", "use-of-something-else")]
    [InlineData("climb 0 m\nused 47.6 kWh\nexpect model-gap < -10 %", "expectation-missed")]
    public void What_does_not_fit_is_reported(string runLines, string slug)
    {
        Study.Slugs(Text(runLines, Electric)).Should().Contain(slug);
    }

    [Fact]
    public void A_run_that_fits_is_silent()
    {
        Study.Slugs(Text("climb 0 m\nused 47.6 kWh\nused-wall 52 kWh", Electric)).Should().BeEmpty();
    }
}

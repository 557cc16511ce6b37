using RigLang.Analysis.Studies;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Runs;

/// <summary>A coast-down in the lines of a run.</summary>
public sealed class CoastTests
{
    // Synthetic, of known truth: 2400 kg with 3 % for turning parts, C_rr 0.0095, C_dA 0.78 m², air of 1.2 kg/m³, level and calm; every 10 s, rounded to 0.01 m/s.
    private static readonly double[] Speeds = [33.00, 30.21, 27.72, 25.47, 23.44, 21.57, 19.86, 18.27, 16.78, 15.39, 14.07, 12.82, 11.64];

    private static string Text(string runLines, IEnumerable<double>? speeds = null, string rigLines = "") => FormattableString.Invariant($"""
        vehicle v
            mass 2400 kg
            rolling 0.010
            drag-area 0.90 m²
            rotating-mass 3 %
            aboard nothing

        rig r
            vehicle v
        {rigLines}

        run d
            rig r
            date 2026-09-12
            air 21.00313 °C
            altitude 0 m
        {string.Join('\n', runLines.Split('\n').Select(line => "    " + line))}
        {string.Join('\n', (speeds ?? Speeds).Select((speed, index) => FormattableString.Invariant($"    coast {index * 10} s {speed:F2} m/s")))}
        """);

    private static RunStudy Run(string text)
    {
        var analysis = Study.Of(text);
        return analysis.Run(analysis.Workspace.Find(Study.File, DeclarationKind.Run, "d")!)!;
    }

    [Fact]
    public void A_coast_down_gives_rolling_and_drag_area_back()
    {
        var run = Run(Text("climb 0 m\nwind 0 km/h head"));

        run.Value("coast-rolling").Should().BeApproximately(0.0095, 0.0095 * 0.005);
        run.Value("coast-drag-area").Should().BeApproximately(0.78, 0.78 * 0.005);
        run.Result("model-gap").Applies.Should().BeFalse("nothing was logged of what it used");
    }

    [Fact]
    public void A_known_head_wind_is_taken_off()
    {
        // Against the air, rolling out at speed v with a head wind w is rolling out at v + w without.
        Run(Text("climb 0 m\nwind 3 m/s head", Speeds.Select(speed => speed - 3))).Value("coast-drag-area").Should().BeApproximately(0.78, 0.78 * 0.005);
    }

    [Fact]
    public void A_known_grade_is_taken_off()
    {
        // On 0.2 % uphill as much is added to what holds back at every speed.
        var steps = new List<double> { 33 };
        for (var step = 0; step < 1200; step++)
        {
            steps.Add(steps[^1] - (0.1 * ((2400 * 9.80665 * ((0.0095 * Math.Cos(0.002)) + Math.Sin(Math.Atan(0.002)))) + (0.468 * steps[^1] * steps[^1])) / 2472));
        }

        var run = Run(Text("distance 2 km\nclimb 4 m\ndescent 0 m\nwind 0 km/h head", Enumerable.Range(0, 10).Select(index => steps[index * 100])).Replace("altitude 0 m", "altitude -2 m"));
        run.Value("coast-rolling").Should().BeApproximately(0.0095, 0.0095 * 0.01, "the steps of a tenth of a second are coarse");
        run.Value("coast-drag-area").Should().BeApproximately(0.78, 0.78 * 0.01);
    }

    [Fact]
    public void A_wind_that_nobody_noted_is_most_of_the_doubt()
    {
        string Shown(string lines) => RigLang.Analysis.Results.Catalogue.FindResult("coast-drag-area")!.Write(Run(Text(lines)), 0.78, RigLang.Quantities.DisplaySystem.Metric);

        Shown("climb 0 m\nwind 0 km/h ± 1 km/h head").Should().MatchRegex(@"^0\.78\d* m² ± 0\.0\d+ m²$");
        Shown("climb 0 m").Should().MatchRegex(@"^0\.8 m² ± 0\.[2-9] m²$|^0\.78 m² ± 0\.1\d m²$");
    }

    [Fact]
    public void The_fit_of_the_rig_takes_it_up()
    {
        var analysis = Study.Of(Text("climb 0 m\nwind 0 km/h ± 1 km/h head"));
        var runs = analysis.RunSet(analysis.Workspace.Find(Study.File, DeclarationKind.Rig, "r")!)!;

        runs.Value("fitted-drag-area").Should().BeApproximately(0.78, 0.78 * 0.005);
        analysis.Findings(Study.File).Remaining.Should().Contain(finding => finding.Check.Slug == "runs-say-otherwise" && finding.Message.StartsWith("The coast-down fits a drag area of 0.78"));
    }

    [Theory]
    [InlineData("climb 0 m\nwind 0 km/h head", new[] { 20.0, 25, 30 })]
    [InlineData("climb 0 m\nwind 0 km/h head", new[] { 30.0, 20 })]
    [InlineData("climb 0 m\nwind 0 km/h head", new[] { 30.0, 29.9, 20 })]
    public void A_table_that_is_no_coast_down_is_reported(string lines, double[] speeds)
    {
        Study.Slugs(Text(lines, speeds)).Should().Contain("no-coast-down");
        Run(Text(lines, speeds)).Result("coast-drag-area").IsComputed.Should().BeFalse();
    }

    [Fact]
    public void Without_its_climb_it_says_what_is_wanted() =>
        Study.Findings(Text("wind 0 km/h head")).Single(finding => finding.Check.Slug == "no-coast-down").Message.Should().Be("To read the coast-down, `climb` of run d is wanted.");
}

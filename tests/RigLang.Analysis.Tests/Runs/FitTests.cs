using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Runs;

/// <summary>Rolling and drag area out of logged drives and coast-downs whose truth is known.</summary>
public sealed class FitTests
{
    private const string Rig = """
        vehicle v
            mass 4650 kg
            rolling 0.012
            drag-area 2.2 m²
            aboard nothing
            electric
                usable-energy 100 kWh
                drive-efficiency 86 %
                cold-loss 0 %
                regeneration 60 %
                regeneration-power 80 kW
                auxiliary 1.2 kW

        rig r
            vehicle v
            speed 90 km/h


        """;

    // Synthetic drives of a rig of 4650 kg, battery to wheel 0.86, 1.2 kW beside the drive, air of 1.18 kg/m³, made with C_rr 0.0102 and C_dA 2.45 m² and
    // rounded to a watt hour. Two formulations give 0.0101997 and 2.45003 back.
    private static readonly (double Kilometres, double Speed, double Rise, double HeadWind, double Used)[] Drives =
        [(40, 80, 0, 0, 15.832), (60, 90, 150, 2, 32.445), (50, 100, -120, -1, 23.084), (30, 70, 60, 3, 12.961), (80, 95, -200, 0, 36.094), (45, 85, 300, -2, 21.627)];

    /// <summary>Half way up each is at the sea and at the temperature where air weighs 1.18 kg/m³.</summary>
    private static string Drive(int number)
    {
        var (length, speed, rise, wind, used) = Drives[number];
        return FormattableString.Invariant($"""
            run d{number}
                rig r
                date 2026-09-1{number}
                section {length} km at {100 * rise / (length * 1000):F6} %
                speed {speed} km/h
                altitude {-rise / 2} m
                air {101325 / (287.05287 * 1.18) - 273.15 + (0.0065 * rise / 2):F4} °C
                wind {Math.Abs(wind)} m/s ± 0.1 m/s {(wind < 0 ? "tail" : "head")}
                used {used} kWh ± 0.05 kWh


            """);
    }

    private static string AllDrives => Rig + string.Concat(Enumerable.Range(0, Drives.Length).Select(Drive));

    private static RunSetStudy Fitted(string text, DeclarationKind kind = DeclarationKind.Rig, string name = "r")
    {
        var analysis = Study.Of(text);
        return analysis.RunSet(analysis.Workspace.Find(Study.File, kind, name)!)!;
    }

    [Fact]
    public void Logged_drives_give_rolling_and_drag_area_back()
    {
        var runs = Fitted(AllDrives);

        runs.Value("fitted-rolling").Should().BeApproximately(0.0102, 1e-6);
        runs.Value("fitted-drag-area").Should().BeApproximately(2.45, 2e-4);
        runs.Value("fit-spread").Should().BeLessThan(0.1, "the data are exact but for their rounding");
        runs.Result("fitted-drag-area").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void A_run_shows_the_same_fit_as_its_rig() =>
        Fitted(AllDrives, DeclarationKind.Run, "d3").Value("fitted-drag-area").Should().Be(Fitted(AllDrives).Value("fitted-drag-area"));

    [Fact]
    public void What_the_drives_say_is_offered_and_cures_the_note()
    {
        var analysis = Study.Of(AllDrives);
        var finding = analysis.Findings(Study.File).Remaining.Should().ContainSingle(finding => finding.Check.Slug == "runs-say-otherwise").Subject;
        finding.Message.Should().StartWith("The 6 drives in sight fit a drag area of 2.45 m² ±").And.Contain("rolling of 0.0102").And.Contain("counts with 2.20 m² and 0.0120");

        var mended = Applied(analysis, AllDrives, finding);
        mended.Should().Contain("    drag-area 2.45 m² ±").And.Contain("    rolling 0.0102");
        Study.Slugs(mended).Should().NotContain("runs-say-otherwise");
        Study.Of(mended).Run(Study.Of(mended).Workspace.Find(Study.File, DeclarationKind.Run, "d1")!)!.Value("model-gap").Should().BeApproximately(0, 0.005);
    }

    [Fact]
    public void A_shared_doubt_does_not_average_out()
    {
        // On level roads a drive that is better by a share asks for as much more at the wheels, of rolling and of air alike: 4 of 86 points are 4.65 %.
        var text = Rig + Level(80) + Level(100);

        Half(Fitted(text)).Should().BeLessThan(0.02);
        Half(Fitted(text.Replace("drive-efficiency 86 %", "drive-efficiency 86 % ± 4 %"))).Should().BeApproximately(2.45 * 4 / 86, 0.01);

        static double Half(RunSetStudy runs) => double.Parse(Shown(runs, "fitted-drag-area").Split('±')[1].Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);

        static string Level(int speed)
        {
            var v = speed / 3.6;
            var used = (((0.0102 * 4650 * 9.80665) + (2.45 * 0.5 * 1.225 * v * v)) / 0.86) + (1200 / v);
            return FormattableString.Invariant($"""
                run level-{speed}
                    rig r
                    date 2026-09-12
                    distance 100 km
                    climb 0 m
                    altitude 0 m
                    air 15 °C
                    wind 0 m/s ± 0.01 m/s head
                    speed {speed} km/h
                    used {used * 1e5 / 3.6e6:F3} kWh ± 0.01 kWh


                """);
        }
    }

    [Fact]
    public void Drives_at_one_speed_are_refused_with_the_reason()
    {
        var text = Rig + Drive(0) + Drive(0).Replace("run d0", "run again") + Drive(0).Replace("run d0", "run third").Replace("15.832", "15.9");

        Fitted(text).Result("fitted-drag-area").Refusal.Should().Be("the drives are too much alike in speed to tell rolling from air");
        Study.Findings(text).Single(finding => finding.Check.Slug == "runs-too-alike").Message.Should().EndWith("They were driven at about 80 km/h.");
    }

    [Fact]
    public void One_drive_fits_nothing_and_says_nothing()
    {
        Fitted(Rig + Drive(1)).Result("fitted-drag-area").Applies.Should().BeFalse();
        Study.Slugs(Rig + Drive(1)).Should().NotContain(["runs-say-otherwise", "runs-too-alike"]);
    }

    [Fact]
    public void A_drive_that_lacks_something_is_left_out()
    {
        var text = AllDrives + Drive(0).Replace("run d0", "run blank").Replace("used 15.832 kWh ± 0.05 kWh", "note \"forgot to look\"");

        Fitted(text).Value("fitted-drag-area").Should().BeApproximately(2.45, 2e-4);
    }

    [Fact]
    public void Runs_of_other_rigs_stay_out()
    {
        var other = AllDrives + "rig other like r\n\n" + Drive(0).Replace("run d0", "run odd").Replace("rig r", "rig other").Replace("15.832", "30");

        Fitted(other).Value("fitted-drag-area").Should().BeApproximately(2.45, 2e-4);
    }

    [Fact]
    public void Gravel_is_taken_off()
    {
        // The rolling fitted is that on asphalt: the same drives on gravel, each with 0.01 more rolling, used as much more.
        var gravel = AllDrives;
        foreach (var (length, _, _, _, used) in Drives)
        {
            var more = 0.01 * 4650 * 9.80665 * length * 1000 / 0.86 / 3.6e6;
            gravel = gravel.Replace(FormattableString.Invariant($"used {used} kWh"), FormattableString.Invariant($"surface gravel\n    used {used + more:F3} kWh"));
        }

        Fitted(gravel).Value("fitted-rolling").Should().BeApproximately(0.0102, 4e-6);
        Fitted(gravel).Result("fitted-rolling").IsEstimated.Should().BeTrue("what gravel adds is estimated");
    }

    [Fact]
    public void Fuel_is_fitted_by_the_engines_own_model()
    {
        const string Petrol = """
            vehicle v
                mass 1400 kg
                rolling 0.0110
                drag-area 0.72 m²
                aboard nothing
                tank fuel 40 L petrol at 2 m behind front-axle
                combustion
                    fuel petrol
                    engine-power 80 kW
                    engine-efficiency 36 %
                    driveline-efficiency 92 %

            rig r
                vehicle v
                speed 90 km/h


            """;
        string Run(int speed, string used) => $"""
            run s{speed}
                rig r
                date 2026-09-12
                distance 100 km
                speed {speed} km/h
                climb 0 m
                altitude 0 m
                wind 0 m/s ± 0.1 m/s head
                air 15 °C
                used {used} L


            """;
        var speeds = new[] { 60, 80, 100, 120 };
        var blank = Study.Of(Petrol + string.Concat(speeds.Select(speed => Run(speed, "5"))));
        var logged = Petrol.Replace("rolling 0.0110", "rolling 0.0150").Replace("0.72 m²", "1.1 m²")
            + string.Concat(speeds.Select(speed => Run(speed, (blank.Run(blank.Workspace.Find(Study.File, DeclarationKind.Run, $"s{speed}")!)!.Value("run-fuel-model") * 1000).ToString("F4", System.Globalization.CultureInfo.InvariantCulture))));

        Fitted(logged).Value("fitted-rolling").Should().BeApproximately(0.0110, 2e-5);
        Fitted(logged).Value("fitted-drag-area").Should().BeApproximately(0.72, 1e-3);
    }

    private static string Shown(RunSetStudy runs, string result) =>
        RigLang.Analysis.Results.Catalogue.FindResult(result)!.Write(runs, runs.Value(result), RigLang.Quantities.DisplaySystem.Metric);

    private static string Applied(WorkspaceAnalysis analysis, string text, Finding finding)
    {
        var lines = text.Split('\n');
        foreach (var edit in finding.Fixes[0].Edits)
        {
            var line = analysis.Workspace.LineOf(edit.Place)!.Value;
            lines[line] = lines[line][..edit.Place.Span.Start] + edit.NewText + lines[line][edit.Place.Span.End..];
        }

        return string.Join('\n', lines);
    }
}

using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>The trailer of the reference rig stands on one axle with 2200 kg: 1100 kg on each tyre.</summary>
public sealed class TyreCheckTests
{
    private static string Trailer(string tyreLines, string rigLines = "couple 0 N·m", string rating = "axle-rating 2600 kg") =>
        Rigs.Plain(rigLines).Replace("        axle-rating 2600 kg\n", $"        {rating}\n" + string.Concat(tyreLines.Split('\n').Select(line => $"        {line}\n")));

    [Fact]
    public void Above_the_load_index_no_pressure_helps()
    {
        // Load index 111 is 1090 kg.
        var finding = Study.Findings(Trailer("tyres 225/75R16C 111/109R\npressure 500 kPa\nrated-pressure 400 kPa")).Single(finding => finding.Check.Slug == "tyres-overloaded");

        finding.Message.Should().StartWith("Each tyre of trailer axle only carries 1100 kg, 10 kg more than its load index allows, 1090 kg.");
        finding.Place.Text.Should().Be("trailer t");
        Study.Slugs(Trailer("tyres 225/75R16C 111/109R\npressure 300 kPa")).Should().NotContain("pressure-too-low", "a second finding would ask for what doesn't help");
    }

    [Fact]
    public void Below_its_pressure_a_tyre_is_a_smaller_one()
    {
        // Load index 121 is 1450 kg at 500 kPa; at 300 kPa 1450 · 0.6^0.8 = 963.6 kg, and 1100 kg need 500 · (1100/1450)^1.25 = 354.0 kPa.
        var finding = Study.Findings(Trailer("tyres 225/75R16C 121/120R\npressure 300 kPa\nrated-pressure 500 kPa")).Single(finding => finding.Check.Slug == "pressure-too-low");

        finding.Severity.Should().Be(Severity.Warning);
        finding.Message.Should().Be(
            "Each tyre of trailer axle only carries 1100 kg; at 300 kPa it is good for 964 kg. It needs 354 kPa at least, cold; the maker's own figure counts before this one.");
    }

    [Theory]
    // A passenger-car tyre of load index 113 (1150 kg) on a trailer counts 1045 kg under the US rules (49 CFR 571.110 S4.2.2.2).
    [InlineData("rules us", true)]
    [InlineData("rules de", false)]
    public void The_us_rules_divide_a_passenger_car_tyre_on_a_trailer(string rules, bool isOver) =>
        Study.Slugs(Trailer("tyres P255/70R18 113T\npressure 300 kPa", "couple 0 N·m\n" + rules)).Contains("tyres-overloaded").Should().Be(isOver);

    [Theory]
    // Two tyres of load index 117 (1285 kg) carry 2570 kg.
    [InlineData("axle-rating 2570 kg", "couple 0 N·m", false)]
    [InlineData("axle-rating 2580 kg", "couple 0 N·m", true)]
    // 45 % on each tyre suffices for a light European trailer: 1285 / 0.45 = 2855 kg.
    [InlineData("axle-rating 2850 kg", "couple 0 N·m\nrules eu", false)]
    [InlineData("axle-rating 2860 kg", "couple 0 N·m\nrules eu", true)]
    public void Tyres_match_the_axles_plate(string rating, string rigLines, bool isShort) =>
        Study.Slugs(Trailer("tyres 225/75R16C 117/115R\npressure 500 kPa", rigLines, rating)).Contains("tyres-below-axle-rating").Should().Be(isShort);

    [Theory]
    [InlineData("tyres 225/75R16C 121/120L", "120 km/h", null)]
    [InlineData("tyres 225/75R16C 121/120L", "121 km/h", Severity.Error)]
    [InlineData("tyres ST225/75R15", "66 mph", Severity.Warning)]
    [InlineData("tyres ST225/75R15", "65 mph", null)]
    public void The_slowest_tyre_sets_the_speed(string tyres, string speed, Severity? severity) =>
        Study.Findings(Trailer(tyres, $"couple 0 N·m\nspeed {speed}")).Where(finding => finding.Check.Slug == "tyre-too-slow").Select(finding => (Severity?)finding.Severity)
            .SingleOrDefault().Should().Be(severity);

    [Fact]
    public void A_spare_is_not_asked_for_its_load_index() =>
        Study.Findings(Trailer("tyres 225/75R16C").Replace("    brakes electric", "    spare 225/75R16C\n    brakes electric")).Where(finding => finding.Check.Slug == "service-description-missing")
            .Should().ContainSingle().Which.Place.Text.Should().Be("225/75R16C");

    [Theory]
    [InlineData("2020-W27", true)]
    [InlineData("2020-W28", false)]
    public void Trailer_tyres_are_renewed_at_six_years(string made, bool isOld)
    {
        // The trip starts on Saturday 4 July 2026; week 27 of 2020 began on 29 June, week 28 on 6 July.
        var text = Trailer($"tyres 225/75R16C 121/120R\ntyres-made {made}") + "\n\ntrip out\n    rig r\n    depart 2026-07-04 09:00\n    start home\n    leg coast\n        distance 20 km\n        climb 0 m\n        speed 80 km/h\n";

        Study.Slugs(text).Contains("trailer-tyre-old").Should().Be(isOld);
    }
}

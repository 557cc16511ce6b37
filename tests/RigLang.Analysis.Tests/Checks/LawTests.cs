using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>Dated facts of law: only where a rig names its rules, and against the texts as read on 2022-03-26 (StVZO 42 and 44, StVO 3 and 18, 9th exemption regulation, FeV 6).</summary>
public sealed class LawTests
{
    /// <summary>A caravan with a gross mass of 1400 kg behind a kerb mass of 1650 kg, everything said that the exemption asks for.</summary>
    private static string Caravan(string rules, string rigLines = "speed 100 km/h", string stabiliser = "no", string brakes = "overrun", string dampers = "yes", string tongue = "80 kg") => $"""
        vehicle v
            wheelbase 2.80 m
            overhang 1.00 m
            kerb-mass 1650 kg
            body estate
            abs yes
            gross-rating 2200 kg
            combined-rating 3800 kg
            towing-rating 1800 kg
            tongue-rating 90 kg
            axle front
                carries 900 kg
                axle-rating 1150 kg
            axle rear
                carries 750 kg
                axle-rating 1200 kg
            aboard nothing

        trailer t
            mass 1300 kg
            tongue {tongue}
            coupling-to-axle 4.50 m
            body box
            gross-rating 1400 kg
            brakes {brakes}
            breakaway yes
            shock-absorbers {dampers}
            stabiliser {stabiliser}
            stability-control no
            axle only
                axle-rating 1500 kg
                tyres 195/70R14 96N
                pressure 300 kPa
            aboard nothing

        rig r
            vehicle v
            trailer t
            {(rules.Length == 0 ? "" : "rules " + rules)}
            {string.Join("\n    ", rigLines.Split('\n'))}
        """;

    [Theory]
    // 0.8 · 1650 = 1320 kg without, 1.0 · 1650 = 1650 kg with a stabiliser (9th exemption regulation, section 1).
    [InlineData("no", true)]
    [InlineData("yes", false)]
    public void A_stabiliser_opens_100_kmh_for_a_caravan(string stabiliser, bool isReported) =>
        Study.Slugs(Caravan("de", stabiliser: stabiliser)).Contains("speed-over-law").Should().Be(isReported);

    [Theory]
    [InlineData("speed 80 km/h", null)]
    [InlineData("speed 90 km/h", Severity.Error)]
    [InlineData("speed 101 km/h", Severity.Error)]
    public void Without_dampers_it_is_80_kmh(string speed, Severity? severity) =>
        Study.Findings(Caravan("de", speed, dampers: "no", stabiliser: "yes")).Where(finding => finding.Check.Slug == "speed-over-law").Select(finding => (Severity?)finding.Severity)
            .SingleOrDefault().Should().Be(severity);

    [Fact]
    public void A_condition_that_nobody_wrote_down_is_asked_for_and_not_guessed()
    {
        var finding = Study.Findings(Caravan("de", stabiliser: "yes").Replace("    abs yes\n", "")).Single(finding => finding.Check.Slug == "speed-over-law");

        finding.Severity.Should().Be(Severity.Warning);
        finding.Message.Should().Contain("whether the vehicle has antilock brakes (`abs`)");
    }

    [Theory]
    [InlineData("", "licence b\nspeed 130 km/h")]
    [InlineData("none", "licence b\nspeed 130 km/h")]
    [InlineData("eu", "licence be\nspeed 130 km/h")]
    public void Nothing_is_checked_that_the_rules_do_not_name(string rules, string lines) =>
        Study.Slugs(Caravan(rules, lines, tongue: "10 kg")).Should().NotContain("speed-over-law").And.NotContain("tongue-below-law").And.NotContain("licence-too-small");

    [Theory]
    // 2200 + 1400 = 3600 kg: above 3500, within 4250 (FeV 6, 6a).
    [InlineData("b", true)]
    [InlineData("b96", false)]
    [InlineData("be", false)]
    public void The_licence_goes_by_gross_masses(string licence, bool isTooSmall) =>
        Study.Slugs(Caravan("eu", $"licence {licence}")).Contains("licence-too-small").Should().Be(isTooSmall);

    [Theory]
    // 4 % of 1300 kg is 52 kg, and 25 kg is enough (StVZO 44(3)).
    [InlineData("24 kg", true)]
    [InlineData("25 kg", false)]
    public void The_tongue_needs_25_kg_at_most(string tongue, bool isTooLight) =>
        Study.Slugs(Caravan("de", "speed 80 km/h", tongue: tongue)).Contains("tongue-below-law").Should().Be(isTooLight);

    [Fact]
    public void An_unbraked_trailer_is_held_to_half_the_kerb_mass_and_75_kg()
    {
        var message = Study.Findings(Caravan("de", "speed 80 km/h", brakes: "none")).Single(finding => finding.Check.Slug == "unbraked-too-heavy").Message;

        // (1650 + 75) / 2 = 862.5 kg, but never above 750 kg (StVZO 42(2)).
        message.Should().Contain("1300 kg").And.Contain("750 kg").And.Contain("as read 2022-03-26");
    }

    [Theory]
    [InlineData("estate", Severity.Error)]
    [InlineData("suv", Severity.Warning)]
    public void More_than_the_cars_own_gross_mass_is_for_off_road_vehicles(string body, Severity severity) =>
        Study.Findings(Caravan("de", "speed 80 km/h").Replace("body estate", $"body {body}").Replace("gross-rating 2200 kg", "gross-rating 1250 kg"))
            .Single(finding => finding.Check.Slug == "towed-over-law").Severity.Should().Be(severity);

    [Fact]
    public void A_practice_can_not_loosen_the_law()
    {
        var text = Caravan("de", "speed 80 km/h\npractice ours", tongue: "15 kg") + "\n\npractice ours\n    limit tongue-ratio 0 % .. 50 %\n";

        Study.Slugs(text).Should().Contain("tongue-below-law").And.NotContain("outside-practice");
    }

    [Fact]
    public void A_leg_of_a_trip_is_held_to_the_same_speed()
    {
        var text = Caravan("de", "speed 80 km/h") + "\n\ntrip out\n    rig r\n    start home\n    leg coast\n        distance 20 km\n        climb 0 m\n        speed 95 km/h\n";

        Study.Findings(text).Where(finding => finding.Check.Slug == "speed-over-law").Should().ContainSingle().Which.Message.Should().StartWith("95 km/h on the leg to coast");
    }
}

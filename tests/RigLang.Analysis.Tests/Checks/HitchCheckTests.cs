using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Checks;

public sealed class HitchCheckTests
{
    private static string With(string hitchLines = "", string trailerLines = "", string vehicleLines = "", string rigLines = "couple 0 N·m") =>
        Rigs.Plain(rigLines).Replace("    bar-length", Block(hitchLines) + "    bar-length").Replace("    brakes electric", Block(trailerLines) + "    brakes electric")
            .Replace("    ball-height", Block(vehicleLines) + "    ball-height");

    /// <summary>The same vehicle with a receiver in place of its own ball.</summary>
    private static string Receiver(string hitchLines, string type = "weight-distributing", string vehicleLines = "") =>
        With(hitchLines, vehicleLines: vehicleLines, rigLines: "speed 80 km/h").Replace("overhang 1.20 m", "pin-overhang 1.00 m").Replace("type weight-distributing", $"type {type}");

    private static string Block(string lines) => lines.Length == 0 ? "" : string.Concat(lines.Split('\n').Select(line => $"    {line}\n"));

    [Theory]
    [InlineData("50 mm", "2 in", "The coupling can jump off.")]
    [InlineData("2 in", "50 mm", "The coupling can't close over it.")]
    [InlineData("2-5/16 in", "58.7 mm", null)]
    [InlineData("2 in", "50.8 mm", null)]
    public void Fifty_millimetres_is_not_two_inches(string ball, string coupling, string? danger)
    {
        var found = Study.Findings(With($"ball {ball}", $"coupling {coupling}")).Where(finding => finding.Check.Slug == "ball-size-mismatch").ToList();

        found.Select(finding => finding.Message.Contains(danger ?? "-")).Should().Equal(danger is null ? [] : [true]);
    }

    [Theory]
    [InlineData("2 in", "2 in", null)]
    [InlineData("50 mm", "2 in", null)]
    [InlineData("2 in", "2.5 in", Severity.Warning)]
    [InlineData("2.5 in", "2 in", Severity.Error)]
    public void A_loose_shank_is_warned_about_and_one_too_large_can_not_be(string shank, string tube, Severity? severity) =>
        Study.Findings(Receiver($"shank-size {shank}\nreach 0.2 m", vehicleLines: $"receiver-size {tube}")).Where(finding => finding.Check.Slug == "shank-size-mismatch")
            .Select(finding => (Severity?)finding.Severity).SingleOrDefault().Should().Be(severity);

    [Fact]
    public void Behind_a_receiver_the_rig_needs_a_hitch_that_says_its_reach()
    {
        Study.Findings(Receiver("")).Single(finding => finding.Check.Slug == "hitch-without-reach").Place.Text.Should().Be("hitch bars");
        Study.Findings(Receiver("").Replace("\n    hitch bars", "")).Single(finding => finding.Check.Slug == "hitch-without-reach").Place.Text.Should().Be("trailer t");
        Study.Slugs(Receiver("reach 0.2 m")).Should().NotContain("hitch-without-reach");
        Study.Slugs(With()).Should().NotContain("hitch-without-reach", "the vehicle has a ball of its own");
    }

    [Theory]
    [InlineData("weight-carrying", "", true)]
    [InlineData("weight-carrying", "towing-rating-carrying 2600 kg\ntongue-rating-carrying 310 kg", false)]
    [InlineData("weight-distributing", "", false)]
    public void Without_distribution_the_lower_rating_is_asked_for(string type, string vehicleLines, bool isAsked) =>
        Study.Slugs(Receiver("reach 0.2 m", type, vehicleLines)).Contains("carrying-rating-unknown").Should().Be(isAsked);

    [Theory]
    [InlineData("type weight-carrying", "    hitch bars", "bars only carries")]
    [InlineData("type weight-distributing", "", "the rig names no hitch")]
    public void Bars_that_are_not_there_can_not_be_set(string type, string hitchLine, string message) =>
        Study.Findings(With(rigLines: "restoration 50 %").Replace("type weight-distributing", type).Replace("    hitch bars", hitchLine))
            .Single(finding => finding.Check.Slug == "bars-on-carrying-hitch").Message.Should().Contain(message);

    [Theory]
    [InlineData("restoration 100 %", false)]
    [InlineData("restoration 101 %", true)]
    // Full restoration of the reference rig is 2847.1 N·m.
    [InlineData("couple 2840 N·m", false)]
    [InlineData("couple 2860 N·m", true)]
    public void More_than_the_front_axle_lost_is_too_much_however_it_is_said(string setting, bool isTooMuch) =>
        Study.Slugs(With(rigLines: setting)).Contains("over-restored").Should().Be(isTooMuch);

    [Theory]
    [InlineData("", "", "", true)]
    [InlineData("yaw-friction none", "", "", true)]
    [InlineData("", "stabiliser no\nstability-control no", "", true)]
    [InlineData("yaw-friction 300 N·m", "", "", false)]
    [InlineData("yaw-friction ?", "", "", false)]
    [InlineData("", "stabiliser yes", "", false)]
    [InlineData("", "", "stability-control yes", false)]
    public void A_heavy_trailer_has_something_against_swing(string hitch, string trailer, string vehicle, bool isMissing) =>
        Study.Slugs(With(hitch, trailer, vehicle)).Contains("no-sway-device").Should().Be(isMissing);

    [Fact]
    public void A_light_trailer_does_without() =>
        Study.Slugs(With().Replace("mass 2500 kg", "mass 1190 kg").Replace("tongue 300 kg", "tongue 100 kg")).Should().NotContain("no-sway-device");

    [Theory]
    // D = 9.81 · 3.0 · 2.7 / 5.7 = 13.94 kN after UN R55, value from memory.
    [InlineData("d-value 13.9 kN", true)]
    [InlineData("d-value 14.0 kN", false)]
    public void Every_plates_d_value_is_enough_for_the_papers(string plate, bool isTooSmall) =>
        Study.Slugs(With(trailerLines: plate)).Contains("d-value-too-small").Should().Be(isTooSmall);
}

using RigLang.Analysis.Results.Trips;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;

namespace RigLang.Analysis.Tests.Trips;

public class TripStudyTests
{
    private const string Lines = "start-charge 90 %\nleg a\n    distance 50 km\n    climb 0 m";

    [Fact]
    public void A_trip_is_kept_while_its_lines_and_its_rig_are_the_same()
    {
        var text = Journey.Electric + Journey.Trip(Lines) + "\nload other\n    on vehicle\n        item bag 10 kg at 2 m behind front-axle\n";
        var before = Study.Of(text);
        var kept = Journey.Find(before);

        Journey.Find(After(before, text, "item bag 10 kg", "item bag 12 kg")).Should().BeSameAs(kept);
        Journey.Find(After(before, text, "distance 50 km", "distance 51 km")).Should().NotBeSameAs(kept);
        Journey.Find(After(before, text, "drag-area 2.6 m²", "drag-area 2.7 m²")).Should().NotBeSameAs(kept);
        Journey.Find(After(before, text, "mass 2500 kg", "mass 2400 kg")).Legs[0].Value("energy-used").Should().BeLessThan(kept.Legs[0].Value("energy-used"));
    }

    [Fact]
    public void A_track_that_changed_on_the_disk_is_read_again()
    {
        var files = new Dictionary<FileId, string> { [Study.File] = Journey.Electric + Journey.Trip("start-charge 90 %\nleg a\n    gpx \"a.gpx\"") };
        var track = new FileId("/rigs/a.gpx");
        var workspace = new Workspace(new Growing(files), "/rigs");
        var before = new WorkspaceAnalysis(workspace);
        Journey.Find(before).Legs[0].Result("leg-distance").IsComputed.Should().BeFalse();

        files[track] = "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"><rte><rtept lat=\"46\" lon=\"8\"/><rtept lat=\"46.1\" lon=\"8\"/></rte></gpx>";

        Journey.Find(before.With(workspace.WithStoredChanged([track]))).Legs[0].Value("leg-distance").Should().BeApproximately(11_115, 10);
    }

    [Fact]
    public void The_rig_of_a_trip_is_the_rig_that_is_looked_at_elsewhere()
    {
        var analysis = Study.Of(Journey.Electric + Journey.Trip(Lines));

        Journey.Find(analysis).Rig.Should().BeSameAs(analysis.Rig(analysis.Workspace.Find(Study.File, DeclarationKind.Rig, "r")!));
    }

    [Fact]
    public void A_trip_without_its_rig_has_no_study_and_says_what_is_missing()
    {
        var analysis = Study.Of("trip p\n    rig nowhere\n    leg a\n        distance 5 km\n");

        analysis.Trip(analysis.Workspace.Find(Study.File, DeclarationKind.Trip, "p")!).Should().BeNull();
        analysis.Findings(Study.File).Remaining.Should().Contain(finding => finding.Check.Slug == "name-unknown");
    }

    [Fact]
    public void A_stop_in_the_wrong_place_still_belongs_to_its_leg()
    {
        var trip = Journey.Of(Journey.Electric, "start-charge 90 %\nstop b\n    pause 20 min\nleg a\n    distance 50 km\nleg b\n    distance 50 km\nleg c\n    distance 50 km");

        trip.Legs[1].Stop!.Block.Key.Should().Be("b");
        trip.Value("standing-time").Should().BeApproximately(1200, 1e-6);
        trip.Legs.Select(leg => leg.PlaceName).Should().Equal("a", "b", "c");
        trip.StartName.Should().Be("home");
    }

    [Theory]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\n    expect energy-left > 90 %", 1)]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\n    expect energy-left > 50 %", 0)]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\n    expect total-distance < 40 km", 1)]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\n    expect combination-drag < 2 m²", 1)]
    [InlineData("expect energy-left > 90 %\nleg a\n    distance 50 km\n    climb 0 m", 1)]
    [InlineData("expect arrival < 30 min\nleg a\n    distance 50 km\n    climb 0 m", 1)]
    [InlineData("expect total-time < 34 min\nleg a\n    distance 50 km\n    climb 0 m", 0)]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\nstop a\n    charger 11 kW ac\n    charge-to 100 %\n    expect charge-time < 1 h", 1)]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\nstop a\n    charger 11 kW ac\n    charge-to 100 %\n    price 0.5 EUR/kWh\n    expect stop-cost < 5 EUR", 1)]
    [InlineData("leg a\n    distance 50 km\n    climb 0 m\nstop a\n    charger 11 kW ac\n    charge-to 100 %\n    price 0.5 EUR/kWh\n    expect total-cost < 500 AUD", 1)]
    [InlineData("leg a\n    distance 50 km\n    expect energy-left > 90 %", 0)]
    public void Expectations_are_judged_from_their_block_outward(string lines, int missed) =>
        Study.Slugs(Journey.Electric + Journey.Trip("start-charge 90 %\n" + lines)).Count(slug => slug == "expectation-missed").Should().Be(missed);

    [Fact]
    public void What_is_inherited_is_reported_at_the_trip_that_inherits_it()
    {
        var text = Journey.Electric + Journey.Trip("start-charge 90 %\nreserve 30 %\n" + Lines.Replace("start-charge 90 %\n", "", StringComparison.Ordinal))
            + "\ntrip far like p\n    start-charge 45 %\n";
        var finding = Study.Findings(text).Should().ContainSingle(found => found.Check.Slug == "reserve-not-met").Subject;

        finding.Place.Text.Should().Be("far");
        finding.Message.Should().StartWith("a is reached with ").And.Contain("short of the reserve of 30 %. Leave home with ");
    }

    [Fact]
    public void Accepted_findings_are_taken_out_with_their_reason()
    {
        var text = Journey.Electric + Journey.Trip("start-charge 45 %\nreserve 30 %\nleg a\n    distance 50 km\n    climb 0 m\n    allow reserve-not-met because \"a post stands there\"");
        var findings = Study.Of(text).Findings(Study.File);

        findings.Remaining.Should().BeEmpty();
        findings.Accepted.Should().ContainSingle();
    }

    [Fact]
    public void The_table_shows_each_leg_with_its_stop()
    {
        var trip = Journey.Of(Journey.Electric, "start-charge 90 %\ndepart 2026-10-03 08:00\nleg a \"Somewhere\"\n    distance 90 km\n    climb 0 m\nstop a\n    charger 50 kW dc\n    charge-to 80 %\n    price 0.6 AUD/kWh\nleg b\n    distance 20 km");
        var rows = TripTable.Of(trip);

        rows.Select(row => row.Leg.PlaceName).Should().Equal("Somewhere", "b");
        rows[0].Arrives.ToString().Should().Be("2026-10-03 09:00");
        rows[0].Leaves.Should().NotBeNull();
        rows[0].LeavingWith!.Value.Should().BeApproximately(0.8, 1e-12);
        rows[0].Cost!.Value.Should().BeGreaterThan(5);
        rows[1].Left.IsComputed.Should().BeFalse();
        rows[1].Distance.Value.Should().BeApproximately(20_000, 1e-6);
        rows[1].Stop.Should().BeNull();
    }

    private static WorkspaceAnalysis After(WorkspaceAnalysis before, string text, string old, string replaced)
    {
        var lines = text.Split('\n');
        var line = Array.FindIndex(lines, line => line.Contains(old, StringComparison.Ordinal));
        var start = new LinePosition(line, lines[line].IndexOf(old, StringComparison.Ordinal));
        var file = before.Workspace.Find(Study.File)!;
        return before.With(before.Workspace.WithOpen(file.With(file.Syntax.WithChange(start, start with { Character = start.Character + old.Length }, replaced))));
    }

    private sealed class Growing(Dictionary<FileId, string> files) : IFileSource
    {
        public FileText Read(FileId file) => files.TryGetValue(file, out var text) ? FileText.Of(text) : FileText.None("no such file");

        public IReadOnlyList<FileId> RigFilesUnder(string folder) => [Study.File];
    }
}

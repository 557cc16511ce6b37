using System.Globalization;
using System.Text;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;

namespace RigLang.Analysis.Tests.Trips;

public class TrackTests
{
    private const string Weather = "altitude 0 m\nair 15 °C\nwind 0 km/h head";

    [Fact]
    public void A_track_takes_what_the_same_sections_take()
    {
        // 12 km level, 8 km at 5 %, 10 km at −3 %, a point each 200 m.
        var heights = Enumerable.Range(0, 151).Select(i => i * 0.2).Select(km => km <= 12 ? 0 : km <= 20 ? (km - 12) * 50 : 400 - ((km - 20) * 30)).ToArray();
        var track = Leg(Gpx(heights, 200));
        var sections = Journey.Leg($"section 12 km at 0 %\nsection 8 km at 5 %\nsection 10 km at -3 %\n{Weather}");

        track.Value("leg-distance").Should().BeApproximately(sections.Value("leg-distance"), 60);
        track.Value("leg-climb").Should().BeApproximately(400, 9, "a hill may come out low by twice the band of 4 m");
        track.Value("leg-descent").Should().BeApproximately(300, 9);
        track.Value("energy-used").Should().BeApproximately(sections.Value("energy-used"), 0.01 * sections.Value("energy-used"));
    }

    [Fact]
    public void Heights_that_wander_add_no_climb()
    {
        var noise = new Random(5);
        var heights = Enumerable.Range(0, 500).Select(_ => 100 + (noise.NextDouble() * 6) - 3).ToArray();

        Leg(Gpx(heights, 100)).Value("leg-climb").Should().BeLessThan(10, "the raw sum of rises is some 500 m");
    }

    [Theory]
    [InlineData("wind 30 km/h from 0°", "wind 30 km/h head")]
    [InlineData("wind 30 km/h from 180°", "wind 30 km/h tail")]
    [InlineData("wind 30 km/h from 90°", "wind 30 km/h right")]
    public void Wind_meets_the_track_s_own_course(string bearing, string side)
    {
        var gpx = Gpx(new double[101], 500);

        Leg(gpx, "altitude 0 m\nair 15 °C\n" + bearing).Value("energy-used").Should().BeApproximately(Leg(gpx, "altitude 0 m\nair 15 °C\n" + side).Value("energy-used"), 2000);
    }

    [Fact]
    public void The_track_says_the_altitude_where_no_line_does()
    {
        var high = Leg(Gpx(Enumerable.Repeat(1500.0, 101).ToArray(), 500), "air 15 °C\nwind 0 km/h head");
        var said = Leg(Gpx(Enumerable.Repeat(1500.0, 101).ToArray(), 500), "altitude 0 m\nair 15 °C\nwind 0 km/h head");

        high.Value("energy-used").Should().BeLessThan(said.Value("energy-used"));
        high.Result("energy-used").IsEstimated.Should().BeFalse();
    }

    [Fact]
    public void A_track_without_heights_gives_the_distance_and_asks_for_the_climb()
    {
        var gpx = Gpx(Enumerable.Repeat(double.NaN, 101).ToArray(), 500);

        Leg(gpx).Value("leg-distance").Should().BeApproximately(50_000, 100);
        Leg(gpx).Result("energy-used").Missing!.Words.Should().Be("`climb` of leg a, trip p");
        Leg(gpx, Weather + "\nclimb 300 m\ndescent 300 m").Value("energy-used").Should()
            .BeApproximately(Journey.Leg($"distance 50 km\nclimb 300 m\ndescent 300 m\n{Weather}").Value("energy-used"), 100_000);
    }

    [Fact]
    public void Heights_that_are_missing_here_and_there_are_drawn_between_the_others()
    {
        double[] heights = [.. Enumerable.Range(0, 100).Select(i => i % 3 == 1 ? double.NaN : i * 5.0)];

        Leg(Gpx(heights, 500)).Value("leg-climb").Should().BeApproximately(495, 1);
    }

    [Theory]
    [InlineData("\"b.gpx\"")]
    [InlineData("\"../outside.gpx\"")]
    [InlineData("\"/etc/hostname\"")]
    public void A_track_that_cannot_be_read_is_missing(string path)
    {
        var leg = Journey.Leg($"gpx {path}");

        leg.Result("leg-distance").Missing!.Words.Should().Be("`gpx` of leg a, trip p");
        leg.Result("energy-left").IsComputed.Should().BeFalse();
    }

    [Fact]
    public void A_track_that_stays_in_one_place_goes_nowhere()
    {
        var text = Journey.Electric + Journey.Trip("start-charge 90 %\nleg a\n    gpx \"a.gpx\"");
        var findings = Study.Of(text, ("a.gpx", Gpx([10, 10, 10], 0))).Findings(Study.File).Remaining;

        findings.Should().ContainSingle(finding => finding.Check.Slug == "track-unreadable").Which.Message.Should().Contain("goes nowhere");
    }

    [Fact]
    public void A_path_counts_from_the_file_where_its_line_stands()
    {
        var used = Journey.Electric + "trip before\n    rig r\n    start home\n    start-charge 90 %\n    leg a\n        gpx \"tracks/a.gpx\"\n";
        var analysis = Study.Of("use \"deep/other.rig\"\ntrip p like before\n    start-charge 80 %\n", ("deep/other.rig", used), ("deep/tracks/a.gpx", Gpx(new double[101], 500)));

        Journey.Find(analysis).Legs[0].Value("leg-distance").Should().BeApproximately(50_000, 100);
    }

    [Theory]
    [InlineData(0, "gap of 9")]
    [InlineData(1, "steep somewhere, which no road is")]
    [InlineData(2, "have a height")]
    public void What_is_odd_about_a_track_is_said(int which, string words)
    {
        var gpx = which switch
        {
            0 => Gpx([.. Enumerable.Repeat(0.0, 10)], 1000, from => from == 5 ? 9000 : 1000),
            1 => Gpx([.. Enumerable.Range(0, 50).Select(i => i is > 20 and < 30 ? (i - 20) * 120.0 : i < 30 ? 0 : 1200)], 300),
            _ => Gpx([0, double.NaN, 5, 6, 7], 500),
        };
        var text = Journey.Electric + Journey.Trip("start-charge 90 %\nleg a\n    speed 20 km/h\n    gpx \"a.gpx\"");

        Study.Of(text, ("a.gpx", gpx)).Findings(Study.File).Remaining.Where(finding => finding.Check.Slug == "track-odd").Select(finding => finding.Message).Should().Contain(message => message.Contains(words));
    }

    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 1)]
    public void A_track_that_runs_the_other_way_is_told_by_the_one_before(bool reversed, int findings)
    {
        var first = Gpx(new double[21], 500);
        var second = Gpx(new double[21], 500, north: 10_000 / 111_195.0, reversed: reversed);
        var text = Journey.Electric + Journey.Trip("start-charge 90 %\nleg a\n    gpx \"a.gpx\"\nleg b\n    gpx \"b.gpx\"");

        Study.Of(text, ("a.gpx", first), ("b.gpx", second)).Findings(Study.File).Remaining
            .Count(finding => finding.Message.Contains("runs the other way", StringComparison.Ordinal)).Should().Be(findings);
    }

    private static LegSubject Leg(string gpx, string lines = Weather) => Journey.Leg($"gpx \"a.gpx\"\n{lines}", Journey.Electric, ("a.gpx", gpx));

    private static string Gpx(double[] heights, double step, bool reversed = false, double north = 0) => Gpx(heights, step, _ => step, reversed, north);

    /// <summary>Straight north from 46° N, 8° E; one step in metres between neighbouring points.</summary>
    private static string Gpx(double[] heights, double step, Func<int, double> stepFrom, bool reversed = false, double north = 0)
    {
        var metresPerDegree = Geodesy.Distance(46, 8, 46.5, 8) * 2;
        var points = new List<string>();
        var latitude = 46 + north;
        for (var i = 0; i < heights.Length; i++)
        {
            var height = double.IsNaN(heights[i]) ? "" : string.Create(CultureInfo.InvariantCulture, $"<ele>{heights[i]:0.###}</ele>");
            points.Add(string.Create(CultureInfo.InvariantCulture, $"<trkpt lat=\"{latitude:0.########}\" lon=\"8\">{height}</trkpt>"));
            latitude += (step == 0 ? 0 : stepFrom(i)) / metresPerDegree;
        }

        if (reversed)
        {
            points.Reverse();
        }

        return new StringBuilder("<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>").AppendJoin("", points).Append("</trkseg></trk></gpx>").ToString();
    }
}

using System.Globalization;
using System.Text;
using FsCheck.Xunit;
using RigLang.Model.Tracks;

namespace RigLang.Model.Tests.Tracks;

public class GpxReaderTests
{
    [Fact]
    public void Points_of_all_segments_of_all_tracks_come_one_behind_the_other()
    {
        var track = Read("""
            <trk><trkseg><trkpt lat="-33.0" lon="150.0"><ele>20</ele></trkpt><trkpt lat="-33.1" lon="150.1"><ele>25.5</ele></trkpt></trkseg>
                 <trkseg><trkpt lat="-33.2" lon="150.2"><ele>30</ele></trkpt></trkseg></trk>
            <trk><trkseg><trkpt lat="-33.3" lon="150.3"><ele>-2</ele></trkpt></trkseg></trk>
            """).Track!;

        track.Latitudes.Should().Equal(-33.0, -33.1, -33.2, -33.3);
        track.Longitudes.Should().Equal(150.0, 150.1, 150.2, 150.3);
        track.Elevations.Should().Equal(20, 25.5, 30, -2);
        track.HasElevations.Should().BeTrue();
    }

    [Fact]
    public void A_route_is_read_where_there_is_no_track()
    {
        Read("""<rte><rtept lat="46" lon="8"/><rtept lat="46.1" lon="8"/></rte>""").Track!.Count.Should().Be(2);
        Read("""
            <rte><rtept lat="46" lon="8"/><rtept lat="46.1" lon="8"/></rte>
            <trk><trkseg><trkpt lat="1" lon="2"/><trkpt lat="1" lon="3"/><trkpt lat="1" lon="4"/></trkseg></trk>
            """).Track!.Count.Should().Be(3);
    }

    [Fact]
    public void A_missing_height_is_not_zero()
    {
        var track = Read("""<trk><trkseg><trkpt lat="46" lon="8"><ele>400</ele></trkpt><trkpt lat="46.1" lon="8"/></trkseg></trk>""").Track!;

        track.Elevations[1].Should().Be(double.NaN);
        track.HasElevations.Should().BeFalse();
    }

    [Fact]
    public void What_other_programs_add_to_a_file_does_no_harm() =>
        Read("""
            <metadata><name>Ride</name><time>2026-10-03T08:15:00Z</time><extensions><x:y xmlns:x="urn:x">1</x:y></extensions></metadata>
            <wpt lat="46" lon="8"><name>Spring</name></wpt>
            <trk><trkseg><trkpt lat="46" lon="8"><time>2026-10-03T08:15:00Z</time><extensions><hr>90</hr></extensions></trkpt><trkpt lat="46.1" lon="8"/></trkseg></trk>
            """).Track!.Count.Should().Be(2);

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("not a track")]
    [InlineData("\0\u0001\u0002binary")]
    [InlineData("{\"type\":\"Feature\"}")]
    [InlineData("<html><body>404</body></html>")]
    [InlineData("<gpx")]
    [InlineData("<gpx xmlns=\"http://www.topografix.com/GPX/1/1\" version=\"1.1\"><trk><trkseg><trkpt lat=\"1\" lon=\"2\">")]
    public void What_is_no_track_file_says_so(string text)
    {
        var reading = GpxReader.Read(text);

        reading.Track.Should().BeNull();
        reading.Problem.Should().NotBeNullOrWhiteSpace().And.NotContain("\n").And.NotContain("   at ");
    }

    [Theory]
    [InlineData("")]
    [InlineData("<trk><trkseg/></trk>")]
    [InlineData("<trk><trkseg><trkpt lat=\"46\" lon=\"8\"/></trkseg></trk>")]
    public void One_point_or_none_is_nothing_to_drive_along(string inner) => Read(inner).Problem.Should().Contain("two points");

    [Theory]
    [InlineData("lat=\"91\" lon=\"8\"")]
    [InlineData("lat=\"46\" lon=\"1e400\"")]
    [InlineData("lat=\"NaN\" lon=\"8\"")]
    [InlineData("lat=\"north\" lon=\"8\"")]
    [InlineData("lat=\"46,5\" lon=\"8\"")]
    [InlineData("lat=\"46\"")]
    [InlineData("lat=\"46\" lon=\"8\"><ele>high</ele></trkpt><trkpt lat=\"46\" lon=\"8\"")]
    public void A_point_that_is_nowhere_on_the_earth_spoils_the_file_with_a_word(string point)
    {
        var reading = Read($"""<trk><trkseg><trkpt {point}/><trkpt lat="46.1" lon="8"/></trkseg></trk>""");

        reading.Track.Should().BeNull();
        reading.Problem.Should().NotBeNullOrWhiteSpace();
    }

    [Fact]
    public void Nothing_is_fetched_for_an_entity_and_none_is_expanded()
    {
        foreach (var declarations in new[]
        {
            "<!ENTITY x SYSTEM \"file:///etc/hostname\">",
            "<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\"><!ENTITY x \"&b;&b;&b;&b;&b;&b;&b;&b;\">",
        })
        {
            var reading = GpxReader.Read($"""
                <!DOCTYPE gpx [{declarations}]>
                <gpx version="1.1" creator="t" xmlns="http://www.topografix.com/GPX/1/1"><metadata><name>&x;</name></metadata>
                <trk><trkseg><trkpt lat="46" lon="8"/><trkpt lat="46.1" lon="8"/></trkseg></trk></gpx>
                """);

            reading.Track.Should().BeNull();
            reading.Problem.Should().Contain("DTD");
        }
    }

    [Property(MaxTest = 100)]
    public void A_sound_file_is_read_as_the_whole_reader_reads_it(int seed)
    {
        var random = new Random(seed);
        string Number(double low, double high) => (low + ((high - low) * random.NextDouble())).ToString(random.Next(2) == 0 ? "F5" : "R", CultureInfo.InvariantCulture);
        string Point(string name) => $"""<{name} lon="{Number(-180, 179.9)}" lat="{Number(-90, 90)}">{random.Next(4) switch
        {
            0 => "",
            1 => $"<ele>{Number(-400, 5000)}</ele><time>2026-10-03T08:15:00Z</time>",
            2 => $"<!-- a note --><ele>{Number(-400, 5000)}</ele><name>a</name><extensions><x:a xmlns:x=\"urn:x\"><x:ele>7</x:ele><trkpt lat=\"1\" lon=\"1\"/></x:a></extensions>",
            _ => "<hdop>1.2</hdop>",
        }}</{name}>""";
        string Points(string name) => string.Concat(Enumerable.Range(0, random.Next(5)).Select(_ => Point(name)));
        var inner = $"<metadata><name>n</name></metadata><wpt lat=\"1\" lon=\"2\"><ele>3</ele></wpt><rte><name>r</name>{Points("rtept")}</rte><trk><name>t</name><trkseg>{Points("trkpt")}</trkseg>\n<trkseg>{Points("trkpt")}</trkseg></trk>";

        var track = Read(inner).Track;

        var whole = NetTopologySuite.IO.GpxFile.Parse(File(inner), null);
        var expected = whole.Tracks.SelectMany(way => way.Segments).SelectMany(segment => segment.Waypoints).ToList();
        expected = expected.Count > 0 ? expected : [.. whole.Routes.SelectMany(way => way.Waypoints)];
        if (expected.Count < 2)
        {
            track.Should().BeNull();
            return;
        }

        track!.Latitudes.Should().Equal(expected.Select(point => (double)point.Latitude));
        track.Longitudes.Should().Equal(expected.Select(point => (double)point.Longitude));
        track.Elevations.Should().Equal(expected.Select(point => point.ElevationInMeters ?? double.NaN));
    }

    [Fact]
    public void Points_are_read_alike_in_every_locale()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NumberGroupSeparator = "." } };

            Read("""<trk><trkseg><trkpt lat="46.25" lon="8.5"/><trkpt lat="46.5" lon="8.5"/></trkseg></trk>""").Track!.Latitudes.Should().Equal(46.25, 46.5);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Property]
    public bool No_text_makes_it_throw(string? noise)
    {
        var text = new StringBuilder("""<gpx version="1.1" creator="t" xmlns="http://www.topografix.com/GPX/1/1"><trk><trkseg><trkpt lat="46" lon="8"/>""");
        text.Insert((noise?.Length ?? 0) * 7 % text.Length, noise);
        var reading = GpxReader.Read(text + "<trkpt lat=\"46.1\" lon=\"8\"/></trkseg></trk></gpx>");
        return (reading.Track is null) != (reading.Problem is null);
    }

    private static TrackReading Read(string inner) => GpxReader.Read(File(inner));

    private static string File(string inner) => $"""<?xml version="1.0" encoding="UTF-8"?><gpx version="1.1" creator="t" xmlns="http://www.topografix.com/GPX/1/1">{inner}</gpx>""";
}

using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Quantities;

namespace RigLang.Analysis.Tests.Trips;

public class ClockTests
{
    [Fact]
    public void Arrivals_are_counted_from_the_departure_and_shown_by_its_clock()
    {
        var trip = Trip("depart 2026-10-03 08:15 +10:00", "pause 30 min");

        trip.Legs[0].Value("arrival").Should().BeApproximately(3600, 1e-6);
        Shown(trip, 0).Should().Be("2026-10-03 09:15 +10:00");
        Shown(trip, 1).Should().Be("2026-10-03 10:45 +10:00");
        LeavesShown(trip).Should().Be("2026-10-03 09:45 +10:00");
        TripTable.Of(trip)[0].Arrives.ToString().Should().Be("2026-10-03 09:15 +10:00");
    }

    [Fact]
    public void A_change_of_clocks_changes_what_is_shown_and_not_what_passes()
    {
        var trip = Trip("depart 2026-10-03 08:15 +10:00", "pause 30 min\n    local-time +09:30");

        trip.Legs[1].Value("arrival").Should().BeApproximately(9000, 1e-6);
        Shown(trip, 0).Should().Be("2026-10-03 09:15 +10:00", "the clock changes at the stop");
        LeavesShown(trip).Should().Be("2026-10-03 09:15 +09:30");
        Shown(trip, 1).Should().Be("2026-10-03 10:15 +09:30");
    }

    [Theory]
    [InlineData("until 2026-10-03 12:00", 12 * 3600)]
    [InlineData("until 2026-10-03 12:00 +10:00", 12 * 3600)]
    [InlineData("until 2026-10-03 12:00 +11:00", 11 * 3600)]
    [InlineData("until 2026-10-03 12:00\n    local-time +09:30", 12.5 * 3600)]
    [InlineData("until 2026-10-04 01:00", 25 * 3600)]
    public void A_stop_is_held_until_a_moment_of_its_place(string stop, double sinceMidnight) =>
        Trip("depart 2026-10-03 08:00 +10:00", stop).Legs[0].Stop!.Value("departure").Should().BeApproximately(sinceMidnight - (8 * 3600), 1e-6);

    [Fact]
    public void A_moment_that_has_gone_by_holds_nothing()
    {
        var trip = Trip("depart 2026-10-03 08:00 +10:00", "until 2026-10-03 08:30");

        trip.Legs[0].Stop!.Value("stop-time").Should().Be(0);
    }

    [Fact]
    public void Without_an_offset_all_clocks_are_one()
    {
        var trip = Trip("depart 2026-10-03 08:15", "pause 30 min\n    local-time +09:30");

        Shown(trip, 1).Should().Be("2026-10-03 10:45");
        Trip("depart 2026-10-03 08:00", "until 2026-10-03 12:00").Legs[0].Stop!.Value("departure").Should().BeApproximately(4 * 3600, 1e-6);
    }

    [Theory]
    [InlineData("note \"no departure\"")]
    [InlineData("depart 2026-10-03")]
    public void Without_a_departure_there_are_durations_only(string line)
    {
        var trip = Trip(line, "pause 30 min");

        trip.Value("total-time").Should().BeApproximately(9000, 1e-6);
        Shown(trip, 0).Should().Be("1 h after departure");
        TripTable.Of(trip)[0].Arrives.Should().BeNull();
        trip.Result("most-driving-day").Missing!.Fact.Keyword.Should().Be("depart");
        Trip(line, "until 2026-10-03 12:00").Legs[1].Result("arrival").Missing!.Fact.Keyword.Should().Be("depart");
    }

    [Fact]
    public void Driving_is_counted_by_days_of_the_clock()
    {
        var trip = Journey.Of(Journey.Electric, """
            depart 2026-10-03 22:30 +10:00
            leg a
                distance 270 km
            stop a
                until 2026-10-04 20:00
            leg b
                distance 90 km
            """);

        trip.Compute(Days.OfTrip, trip).Value.Should().Equal(new DayDriving(new DateOnly(2026, 10, 3), 5400), new DayDriving(new DateOnly(2026, 10, 4), 5400 + 3600));
        trip.Value("most-driving-day").Should().BeApproximately(9000, 1e-6);
    }

    [Fact]
    public void A_leg_over_days_fills_whole_ones()
    {
        var trip = Journey.Of(Journey.Electric, "depart 2026-12-30 12:00 +00:00\nleg a\n    distance 4320 km");

        trip.Compute(Days.OfTrip, trip).Value.Select(day => (day.Date.ToString("yyyy-MM-dd", null), day.Driving)).Should().Equal(
            ("2026-12-30", 12 * 3600.0), ("2026-12-31", 24 * 3600.0), ("2027-01-01", 12 * 3600.0));
    }

    [Fact]
    public void What_the_calendar_cannot_hold_is_shown_as_time()
    {
        var trip = Journey.Of(Journey.Electric, "depart 9999-12-31 12:00 +00:00\nleg a\n    distance 4320 km\nstop a\n    pause 900000 h");

        Shown(trip, 0).Should().EndWith("after departure");
        trip.Result("most-driving-day").IsComputed.Should().BeFalse();
    }

    [Fact]
    public void Days_of_driving_need_an_end()
    {
        var trip = Journey.Of(Journey.Electric, "depart 2026-12-30 12:00\nleg a\n    distance 3000000 km\n    speed 0.001 km/h");

        trip.Result("most-driving-day").IsComputed.Should().BeFalse();
    }

    private static string Shown(TripStudy trip, int leg) => LegResults.Arrival.Write(trip.Legs[leg], trip.Legs[leg].Value("arrival"), DisplaySystem.Metric);

    private static string LeavesShown(TripStudy trip) => StopResults.Departure.Write(trip.Legs[0].Stop!, trip.Legs[0].Stop!.Value("departure"), DisplaySystem.Metric);

    /// <summary>Two legs of an hour with a stop between.</summary>
    private static TripStudy Trip(string line, string stop) => Journey.Of(Journey.Electric, $"{line}\nleg a\n    distance 90 km\nstop a\n    {stop}\nleg b\n    distance 90 km");
}

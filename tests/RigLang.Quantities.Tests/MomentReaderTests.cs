namespace RigLang.Quantities.Tests;

public class MomentReaderTests
{
    [Theory]
    [InlineData("2026-10-03 08:15 +10:00")]
    [InlineData("2026-10-03 08:15 -03:30")]
    [InlineData("2026-10-03 08:15")]
    [InlineData("2026-10-03")]
    [InlineData("2024-02-29")]
    public void A_moment_is_read_and_written(string text)
    {
        MomentReader.TryRead(text, out var moment, out var problem).Should().BeTrue();

        problem.Should().BeNull();
        moment.ToString().Should().Be(text);
    }

    [Theory]
    [InlineData("2026-13-01", "no month 13")]
    [InlineData("2026-02-31", "February 2026 has 28 days")]
    [InlineData("2025-02-29", "February 2025 has 28 days")]
    [InlineData("2026-00-10", "no month 00")]
    [InlineData("2026-04-00", "no day 00")]
    [InlineData("0026-04-01", "year 0026")]
    [InlineData("2026-10-03 24:00", "next day")]
    [InlineData("2026-10-03 25:00", "no hour 25")]
    [InlineData("2026-10-03 08:60", "no minute 60")]
    [InlineData("2026-10-03 08:15 +15:00", "-12:00 to +14:00")]
    [InlineData("2026-10-03 08:15 +10:75", "-12:00 to +14:00")]
    [InlineData("2026-10-03 08:15 +10:00 more", "nothing more")]
    [InlineData("", "missing")]
    [InlineData("tomorrow", "not a date")]
    public void What_is_no_moment_is_refused_in_words(string text, string expected)
    {
        MomentReader.TryRead(text, out _, out var problem).Should().BeFalse();
        problem!.Message.Should().Contain(expected);
    }

    [Theory]
    [InlineData("2026-9-5", "2026-09-05")]
    [InlineData("2026/09/05", "2026-09-05")]
    [InlineData("5.9.2026", "2026-09-05,2026-05-09")]
    [InlineData("25.9.2026", "2026-09-25")]
    [InlineData("9/25/2026", "2026-09-25")]
    [InlineData("2026-25-09", "2026-09-25")]
    public void A_date_in_another_order_is_offered_in_this_one(string text, string suggestions)
    {
        MomentReader.TryReadDate(text, out _, out var problem).Should().BeFalse();
        string.Join(',', problem!.Suggestions).Should().Be(suggestions);
    }

    [Theory]
    [InlineData("8:15", "08:15")]
    [InlineData("8.15", "08:15")]
    [InlineData("17h30", "17:30")]
    public void A_clock_in_another_form_is_offered_in_this_one(string text, string suggestion)
    {
        MomentReader.TryReadClock(text, out _, out var problem).Should().BeFalse();
        problem!.Suggestions.Should().Equal(suggestion);
    }

    [Theory]
    [InlineData("Z", "+00:00")]
    [InlineData("+10", "+10:00")]
    [InlineData("-0330", "-03:30")]
    [InlineData("+9:30", "+09:30")]
    public void An_offset_in_another_form_is_offered_in_this_one(string text, string suggestion)
    {
        MomentReader.TryReadOffset(text, out _, out var problem).Should().BeFalse();
        problem!.Suggestions.Should().Equal(suggestion);
    }

    // ISO 8601: week 1 holds the year's first Thursday. 2020 has 53 weeks (common practice of the calendar).
    [Theory]
    [InlineData("2024-W18", 2024, 4, 29)]
    [InlineData("2026-W01", 2025, 12, 29)]
    [InlineData("2020-W53", 2020, 12, 28)]
    public void A_week_begins_on_its_monday(string text, int year, int month, int day)
    {
        MomentReader.TryReadYearWeek(text, out var week, out _).Should().BeTrue();

        week.Monday.Should().Be(new DateOnly(year, month, day));
        week.ToString().Should().Be(text);
        YearWeek.Of(week.Monday.AddDays(6)).Should().Be(week);
    }

    [Theory]
    [InlineData("2021-W53", "weeks 01 to 52", "")]
    [InlineData("2024-W00", "no week 00", "")]
    [InlineData("1824", "2024-W18", "2024-W18")]
    [InlineData("2024W18", "2024-W18", "2024-W18")]
    [InlineData("2024-w18", "2024-W18", "2024-W18")]
    [InlineData("W18", "not a week", "")]
    public void What_is_no_week_is_refused_in_words(string text, string expected, string suggestions)
    {
        MomentReader.TryReadYearWeek(text, out _, out var problem).Should().BeFalse();
        problem!.Message.Should().Contain(expected);
        string.Join(',', problem.Suggestions).Should().Be(suggestions);
    }

    [Fact]
    public void A_moment_goes_on_over_midnight_and_keeps_its_offset()
    {
        MomentReader.TryRead("2026-12-31 23:30 +10:00", out var moment, out _);

        moment.Plus(TimeSpan.FromMinutes(45)).ToString().Should().Be("2027-01-01 00:15 +10:00");
        moment.Instant.Should().Be(new DateTimeOffset(2026, 12, 31, 13, 30, 0, TimeSpan.Zero));
        moment.Plus(TimeSpan.MaxValue).Should().BeNull();
        new Moment(moment.Date).Instant.Should().BeNull();
    }
}

namespace RigLang.Quantities;

/// <summary>A date, with a clock time or without, with an offset from UTC or without. Without an offset it is local time of a place that nobody named.</summary>
public readonly record struct Moment(DateOnly Date, TimeOnly? Clock = null, TimeSpan? Offset = null)
{
    /// <summary>The point in time, when date, clock and offset are all known and the calendar reaches that far; else null.</summary>
    public DateTimeOffset? Instant
    {
        get
        {
            if (Clock is not { } clock || Offset is not { } offset)
                return null;
            var utc = Date.ToDateTime(clock).Ticks - offset.Ticks;
            return utc < 0 || utc > DateTime.MaxValue.Ticks ? null : new DateTimeOffset(Date.ToDateTime(clock), offset);
        }
    }

    /// <summary>This moment and a duration: the clock runs over midnight, the offset stays. Without a clock, or past the calendar's end, null.</summary>
    public Moment? Plus(TimeSpan duration)
    {
        if (Clock is not { } clock)
            return null;
        var ticks = (decimal)Date.ToDateTime(clock).Ticks + duration.Ticks;
        if (ticks < 0 || ticks > DateTime.MaxValue.Ticks)
            return null;
        var then = new DateTime((long)ticks);
        return new(DateOnly.FromDateTime(then), TimeOnly.FromDateTime(then), Offset);
    }

    /// <summary>"2026-10-03 08:15 +10:00", as much of it as there is; seconds are dropped.</summary>
    public override string ToString() =>
        $"{Date.Year:0000}-{Date.Month:00}-{Date.Day:00}{(Clock is { } clock ? " " + WriteClock(clock) : "")}{(Offset is { } offset ? " " + WriteOffset(offset) : "")}";

    /// <summary>"08:15".</summary>
    public static string WriteClock(TimeOnly clock) => $"{clock.Hour:00}:{clock.Minute:00}";

    /// <summary>"+09:30".</summary>
    public static string WriteOffset(TimeSpan offset) =>
        $"{(offset < TimeSpan.Zero ? "-" : "+")}{Math.Abs(offset.Hours + (24 * offset.Days)):00}:{Math.Abs(offset.Minutes):00}";
}

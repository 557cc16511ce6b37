using System.Globalization;

namespace RigLang.Quantities;

/// <summary>A week of ISO 8601, "2024-W18": what a tyre's sidewall says as 1824.</summary>
public readonly record struct YearWeek(int Year, int Week)
{
    /// <summary>The week's first day; the calendar's first day for a week that there is not (the reader gives none such).</summary>
    public DateOnly Monday => Year is >= 1 and < 9999 && Week >= 1 && Week <= ISOWeek.GetWeeksInYear(Year)
        ? DateOnly.FromDateTime(ISOWeek.ToDateTime(Year, Week, DayOfWeek.Monday))
        : DateOnly.MinValue;

    /// <summary>The week that holds a date.</summary>
    public static YearWeek Of(DateOnly date)
    {
        var day = date.ToDateTime(TimeOnly.MinValue);
        return new(ISOWeek.GetYear(day), ISOWeek.GetWeekOfYear(day));
    }

    public override string ToString() => $"{Year:0000}-W{Week:00}";
}

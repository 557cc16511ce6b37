using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Hours of the day, the same every day: a charger's opening, the time for driving. Over midnight is as good as any.</summary>
/// <param name="Opens">When it opens, s after the start of the trip; any day will do.</param>
/// <param name="Length">How long it stays open, s, above zero; a day or more never closes.</param>
public readonly record struct DailyWindow(double Opens, double Length)
{
    private const double Day = 86_400;

    // What differs by less than this is rounding.
    private const double Hair = 1e-6;

    /// <summary>Open all day and night.</summary>
    public static DailyWindow Always { get; } = new(0, Day);

    /// <summary>Whether it never closes.</summary>
    public bool IsAlways => Length >= Day;

    internal bool IsKnown => !double.IsNaN(Finite(Opens) + Positive(Length));

    /// <summary>The first moment, s, at or after another from which something of a duration (s) is over before it closes; infinity for what is longer than that.</summary>
    public double Start(double from, double duration)
    {
        if (IsAlways)
            return from;
        if (!(duration <= Length + Hair))
            return double.PositiveInfinity;
        double days = Math.Floor((from - Opens + Hair) / Day), into = from - Opens - (days * Day);
        return into + duration <= Length + Hair ? from : from - into + Day;
    }
}

using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A date or clock of the trip can't be counted from the others.</summary>
public sealed class ClockUnclear : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL721",
        Slug = "clock-unclear",
        Severity = Severity.Warning,
        Summary = "A time of day or an offset is missing that other lines of the trip are counted from.",
        Why = "Between two clocks of which one has no offset from universal time nobody can count hours; the line is left out.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    local-time +09:30
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                depart 2026-10-03 08:00 +10:00
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    local-time +09:30
            """),
        Fix = "Write the time of day, and the offset in `depart` if clocks change on the way.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        var depart = trip.Block.Find(TripFacts.Depart);
        var departure = (depart?.Value as MomentValue)?.Moment;
        var isBroken = depart is not null && Judgeable.IsBroken(trip.Parts.Trip, depart);
        if (departure is { Clock: null } && !isBroken)
        {
            yield return Report(trip, depart!.Place, $"`depart` says the day but no time, so no arrival has one: write `depart {new Moment(departure.Value.Date, new TimeOnly(8, 0))}` or whenever it is.");
        }

        if (!isBroken && trip.Block.Find(TripFacts.ArriveBy) is { Value: MomentValue { Moment: var wish } } arrive && Unclear(wish, departure, "arrive-by", depart is not null) is { } late)
        {
            yield return Report(trip, arrive.Place, late);
        }

        foreach (var stop in trip.Stops)
        {
            if (!isBroken && stop.Block.Find(StopFacts.Until) is { Value: MomentValue { Moment: var moment } } until && Unclear(moment, departure, "until", depart is not null) is { } held)
            {
                yield return Report(trip, until.Place, held);
            }

            if (!isBroken && stop.Block.Find(StopFacts.LocalTime) is { } change && Clock.DepartureOf(trip)?.Offset is null)
            {
                yield return Report(trip, change.Place, "`local-time` can't be counted: `depart` doesn't say the offset of the clock at the start. Write it there, for instance `+10:00` behind the time.");
            }
        }
    }

    /// <param name="isWritten">Whether there is a `depart` line; one without a time, or that can't be read, is reported by itself.</param>
    private static string? Unclear(Moment moment, Moment? departure, string keyword, bool isWritten) =>
        moment.Clock is null ? $"`{keyword}` says the day but no time, so it isn't counted. Write the time of day behind it."
        : departure?.Clock is null && isWritten ? null
        : departure?.Clock is null ? $"`{keyword}` can't be counted: no line says when the trip begins. Write `depart` with date and time."
        : moment.Offset is not null && departure.Value.Offset is null ? $"`{keyword}` has an offset and `depart` has none; it is read as the same clock. Write the offset in both, or in neither."
        : null;
}

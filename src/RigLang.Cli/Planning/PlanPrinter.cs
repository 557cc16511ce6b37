using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Cli.Planning;

/// <summary>A plan with one row a leg: how fast, when, what is left, what is charged; below it what stands behind it.</summary>
internal static class PlanPrinter
{
    public static void Print(Printout print, TripStudy trip, UnitChoice units)
    {
        var time = PlanResults.FastestTime.Compute(trip)!;
        if (!time.Applies)
        {
            print.Wrapped(2, "There is nothing to plan: a vehicle with an engine is there soonest at the speeds allowed.");
            return;
        }

        if (!time.IsComputed)
        {
            print.Wrapped(2, new Piece("No plan", Ink.Strong), time.Missing is { } missing ? $": needs {missing.Words}." : $": {time.Refusal ?? "the facts give no number"}.");
            return;
        }

        var plan = PlanTable.Of(trip);
        print.Wrapped(2, new Piece($"Could be done in {QuantityWriter.WriteDuration(time.Value)}", Ink.Strong), Shown.Mark(time), Compared(trip, time.Value));
        print.Wrapped(4, "  from ", trip.StartName, plan[0].LeavesAt is { } leaves ? $", {leaves}" : "", " with ", Percent(units, plan[0].Leg, trip.Compute(PlanTable.StartCharge, trip).Value));
        Table(plan, units).Print(print);
        foreach (var note in PlanNotes.Of(trip, plan))
        {
            print.Wrapped(4, "  ", note);
        }
    }

    private static Columns Table(IReadOnlyList<PlanRow> plan, UnitChoice units)
    {
        var table = new Columns("leg to", "drive at", "leaves", "arrives", "left", "charge to", "plugged", "post");
        var day = plan[0].LeavesAt?.Date;
        foreach (var row in plan)
        {
            table.Add(
                row.Leg.PlaceName,
                units.Write(row.Speed, QuantityKinds.Speed),
                When(row.LeavesAt, row.Leaves, ref day),
                When(row.ArrivesAt, row.Arrives, ref day),
                Percent(units, row.Leg, row.Left),
                row.Charging is { } charging ? Percent(units, row.Leg, charging.Charge) : "",
                row.Charging is { } plugged ? QuantityWriter.WriteDuration(plugged.To - plugged.From) : "",
                row.Charging is { } at && row.Leg.Stop!.Block.All(StopFacts.OtherCharger).Length > 0 ? at.Post : "");
        }

        return table;
    }

    private static string Compared(TripStudy trip, double time)
    {
        var written = TripResults.TotalTime.Compute(trip)!;
        return !written.IsComputed || TripResults.LeastLeft.Compute(trip) is { IsComputed: true, Value: < 0 } ? ""
            : written.Value - time is >= 60 and var sooner ? $", {QuantityWriter.WriteDuration(sooner)} sooner than as written"
            : time - written.Value is >= 60 and var later ? $", {QuantityWriter.WriteDuration(later)} later than as written, which doesn't keep to all of it"
            : ", as soon as written";
    }

    /// <summary>Clock time, with the date before it where the day is another than in the row before; without a departure the time since it.</summary>
    private static string When(Moment? moment, double seconds, ref DateOnly? day)
    {
        if (moment is not { Clock: { } clock } at)
        {
            return QuantityWriter.WriteDuration(seconds);
        }

        var isNew = day != at.Date;
        day = at.Date;
        return (isNew ? $"{at.Date.Month:00}-{at.Date.Day:00} " : "") + Moment.WriteClock(clock);
    }

    private static string Percent(UnitChoice units, LegSubject leg, double share) => units.Brief(LegResults.EnergyLeft, leg, share);
}

using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;

namespace RigLang.Editing.Hovering;

/// <summary>A trip, a leg or a stop.</summary>
internal static class TripCard
{
    /// <summary>What a leg's hover tells of how the rig drives there, where it is known.</summary>
    private static readonly IResult[] Handling =
    [
        LegHandling.Damping, LegClimbing.Grade, LegClimbing.GradeSpeed, LegBraking.StopDistance, LegBraking.Regained, LegBraking.BrakeTemperature,
        LegBraking.TrailerBrakeTemperature,
    ];

    public static CardText Of(View view, TripStudy trip)
    {
        var units = SubjectUnits.Of(trip, view.State.Units);
        var rows = TripTable.Of(trip);
        var card = new CardText().Heading(trip.Title, trip.Parts.Trip.Title).Paragraph($"From {trip.StartName} with {trip.Rig.Title}")
            .Table(rows.Select(row => Row(row, units)));
        card.Table(ResultLines.Rows(TripResults.Set.All, trip, units).Concat(Solved(trip, units)));
        return card.Paragraph(ResultLines.EstimatesInBrief(TripResults.Set.All.Select(result => result.Compute(trip)!).Where(node => node.IsComputed)));
    }

    public static CardText Of(View view, LegSubject leg)
    {
        var units = SubjectUnits.Of(leg, view.State.Units);
        var row = TripTable.Of(leg.Trip)[leg.Index];
        var card = new CardText().Heading($"leg {leg.Leg.Key}", leg.Leg.Opener?.WordOf("title"))
            .Paragraph($"From {leg.Before?.PlaceName ?? leg.Trip.StartName}{(row.Arrives is { } arrives ? $", arrives {arrives}" : "")}")
            .Table(ResultLines.Rows(LegResults.Set.All.Where(result => result != LegResults.Arrival || row.Arrives is null).Concat(Handling.Where(result => result.Compute(leg) is { IsComputed: true, Applies: true })), leg, units));
        if (row.IsPowerShort)
        {
            card.Paragraph("The speed wished isn't held everywhere: the drive hasn't the power.");
        }

        return card.Paragraph(ResultLines.EstimatesInBrief(LegResults.Set.All.Concat<IResult>(Handling).Select(result => result.Compute(leg)!).Where(node => node.IsComputed)));
    }

    public static CardText Of(View view, StopSubject stop)
    {
        var units = SubjectUnits.Of(stop, view.State.Units);
        return new CardText().Heading(stop.Title, stop.Leg.PlaceName == stop.Block.Key ? null : stop.Leg.PlaceName)
            .Table(ResultLines.Rows(StopResults.Set.All, stop, units))
            .Paragraph(ResultLines.EstimatesInBrief(StopResults.Set.All.Select(result => result.Compute(stop)!).Where(node => node.IsComputed)));
    }

    /// <summary>
    /// The trip is solved here, since somebody looks, and once only: how good the answer is takes it many times, and `explain` tells. Where a fact is missing for it
    /// the rows above have said so.
    /// </summary>
    private static IEnumerable<string[]> Solved(TripStudy trip, UnitChoice units) =>
        from result in PlanResults.Set.All
        let node = result.Compute(trip)
        where node is { Applies: true, Missing: null }
        select new[] { result.Title, node.IsComputed ? units.Write(result, trip, node.Value) + Shown.Mark(node) : Shown.NotComputed(node) };

    private static string[] Row(TripRow row, UnitChoice units) =>
    [
        row.Leg.PlaceName,
        Cell(LegResults.Distance, row.Distance, units),
        Cell(LegResults.Time, row.Time, units),
        row.Left is { Applies: true, IsComputed: true } ? $"{units.Brief(LegResults.EnergyLeft, row.Leg, row.Left.Value)} left{Shown.Mark(row.Left)}" : row.Left.Applies ? Shown.NotComputed(row.Left) : "",
    ];

    private static string Cell(IResult result, Analysis.Tracking.Node<double> node, UnitChoice units) => node.IsComputed ? units.Brief(result, node.Subject, node.Value) + Shown.Mark(node) : "?";
}

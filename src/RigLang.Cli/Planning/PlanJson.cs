using RigLang.Analysis.Results.Planning;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Json;
using RigLang.Cli.Showing;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Cli.Planning;

/// <summary>Makes the document that <c>plan --json</c> writes.</summary>
internal static class PlanJson
{
    public static void Write(Stream stream, Workspace workspace, Func<FileId, string> shown, IEnumerable<ShownTrip> trips) =>
        JsonOutput.Write(stream, new PlanDocument("riglang-plan", 1, RigLangProgram.Version, [.. trips.Select(trip => Of(trip, workspace, shown))]));

    private static PlanJsonTrip Of(ShownTrip trip, Workspace workspace, Func<FileId, string> shown)
    {
        var (declaration, time, written) = (trip.Declaration, PlanResults.FastestTime.Compute(trip.Study)!, TripResults.TotalTime.Compute(trip.Study)!);
        var plan = PlanTable.Of(trip.Study);
        return new PlanJsonTrip(
            declaration.Name,
            declaration.Title,
            PlaceJson.Of(workspace, shown, declaration.Own.NamePlace),
            Outcome(time),
            time.IsComputed ? time.Value : null,
            written.IsComputed ? written.Value : null,
            time.IsEstimated,
            time.Missing is null ? time.Refusal : null,
            time.Missing is { } missing ? new NeedJson(missing.Fact.FullName, missing.Words) : null,
            [.. plan.Select(Of)],
            plan.IsEmpty ? [] : [.. PlanNotes.Of(trip.Study, plan)]);
    }

    private static string Outcome(Node<double> time) => !time.Applies ? "not-electric" : time.IsComputed ? "found" : time.Missing is null ? "impossible" : "missing-fact";

    private static PlanJsonLeg Of(PlanRow row) => new(
        row.Leg.Leg.Key,
        row.Speed,
        row.HeldBy?.Reason.ToString().ToLowerInvariant(),
        row.Leaves,
        row.Arrives,
        row.LeavesAt?.ToString(),
        row.ArrivesAt?.ToString(),
        row.Left,
        row.Charging is { } charge ? new PlanJsonCharge(charge.Post, charge.From, charge.To, charge.Charge, charge.Energy) : null);
}

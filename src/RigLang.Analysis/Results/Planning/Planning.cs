using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Planning;

/// <summary>Solves a trip: how fast to drive each leg and how far to charge at each stop, to be there soonest. Carried out only when somebody asks.</summary>
internal static class Planning
{
    /// <summary>Doesn't apply to engines: with fuel nothing is gained by driving slower than allowed.</summary>
    public static Computation<TripStudy, TripPlan?> Of { get; } = new("fastest plan", (read, trip) =>
    {
        if (Drives.Battery(trip.Rig) is not { } battery || trip.Legs.IsEmpty)
        {
            read.NotApplicable();
            return null;
        }

        var legs = trip.Legs.Select(leg => read.Get(LegChoices.Of, leg)).ToList();
        var posts = trip.Legs.Select(leg => PostsOf(read, leg.Stop)).ToList();
        var stops = trip.Legs.Select((leg, index) => Stop(read, leg, battery, posts[index])).ToList();
        var request = new PlanRequest
        {
            Capacity = read.Get(Capacity!, trip),
            StartCharge = Charge.First(read, trip),
            // Each way to drive a leg brings its own.
            Reserve = 0,
            Steps = 4000,
            ChargeStep = 0.01,
            Goal = read.QuantityIfKnown(trip.Block, TripFacts.ArriveWith) ?? 0,
            Legs = [.. legs],
            Stops = stops,
            Hours = HoursOf(read, trip),
        };
        if (read.HasMissing)
        {
            return null;
        }

        var day = DayPlanner.Plan(request);
        if (day.Outcome != PlanOutcome.Found)
        {
            read.Refuse(Refusals.Words(trip, day, legs, request));
        }

        return new TripPlan(day, [.. posts.Select(stop => stop.Select(post => post.Words).ToImmutableArray())]);
    });

    /// <summary>J between empty and full.</summary>
    public static Computation<TripStudy, double> Capacity { get; } = new("battery of the trip", (read, trip) => Drives.UsableEnergy(read, trip.Rig));

    private static PlanStop Stop(Reader read, LegSubject leg, Block battery, ImmutableArray<(ChargingPost Post, double Uncouple, string Words)> posts)
    {
        if (leg.Stop is not { } stop)
        {
            return new PlanStop();
        }

        var overhead = posts.IsEmpty ? 0 : read.Quantity(stop.Block, StopFacts.Connect);
        return new PlanStop
        {
            Posts = [.. posts.Select(post => (Curve: Charging.CurveAt(read, stop, battery, post.Post), post.Uncouple)).Where(post => post.Curve is not null).Select(post => new PlanPost(post.Curve!, overhead + post.Uncouple))],
            Opening = read.LineIfWritten(stop.Block, StopFacts.Open) is { } open ? Hours(read, leg, open, onArrival: false) : DailyWindow.Always,
            Pause = read.QuantityIfKnown(stop.Block, StopFacts.Pause) ?? 0,
            NotBefore = Until(read, stop),
        };
    }

    /// <summary>The post of the <c>charger</c> line first, then the others.</summary>
    private static ImmutableArray<(ChargingPost Post, double Uncouple, string Words)> PostsOf(Reader read, StopSubject? stop)
    {
        if (stop is null)
        {
            return [];
        }

        var uncouple = read.QuantityIfKnown(stop.Block, StopFacts.Uncouple) ?? 0;
        var posts = ImmutableArray.CreateBuilder<(ChargingPost, double, string)>();
        if (Charging.Post(read, stop) is { } own)
        {
            posts.Add((own, uncouple, Words(stop.Trip.Line(stop.Block, StopFacts.Charger)!)));
        }

        foreach (var line in read.Lines(stop.Block, StopFacts.OtherCharger))
        {
            var post = new ChargingPost(line.MeasureOf("power")!.Value, line.WordOf("kind") == "ac", line.MeasureOf("current")?.Value);
            posts.Add((post, line.MeasureOf("uncouple")?.Value ?? uncouple, Words(line)));
        }

        return posts.ToImmutable();

        static string Words(Fact line) => $"{line.MeasureOf("power")!.Text} {line.WordOf("kind")}";
    }

    private static double Until(Reader read, StopSubject stop)
    {
        if (read.LineIfWritten(stop.Block, StopFacts.Until)?.Value is not MomentValue { Moment: { Clock: not null } until })
        {
            return double.NegativeInfinity;
        }

        if (Clock.Seconds(stop.Leg, until) is { } seconds)
        {
            return seconds;
        }

        read.Need(stop.Trip.Block, TripFacts.Depart);
        return double.NegativeInfinity;
    }

    private static IReadOnlyList<DailyWindow> HoursOf(Reader read, TripStudy trip) =>
        read.LineIfWritten(trip.Block, TripFacts.DrivingHours) is { } line ? [.. trip.Legs.Select(leg => Hours(read, leg, line, onArrival: true))] : [];

    private static DailyWindow Hours(Reader read, LegSubject leg, Fact line, bool onArrival)
    {
        if (Clock.Hours(leg, line, onArrival) is { } hours)
        {
            return hours;
        }

        // Hours count from the departure, and nobody says when that is.
        read.Need(leg.Trip.Block, TripFacts.Depart);
        return DailyWindow.Always;
    }
}

using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Reasons;
using RigLang.Cli.Terminals;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax;

namespace RigLang.Cli.Showing;

/// <summary>A trip with one row a leg: how far, when, what it takes, what is left, how far that would go.</summary>
internal sealed class TripOverview
{
    private const string Estimated = "~";

    private readonly TripStudy trip;
    private readonly UnitChoice units;
    private readonly List<string> reasons = [];
    private bool isEstimated;

    private TripOverview(TripStudy trip, UnitChoice units)
    {
        this.trip = trip;
        this.units = units;
    }

    public static void Print(Printout print, TripStudy trip, UnitChoice units) => new TripOverview(trip, units).Print(print);

    private void Print(Printout print)
    {
        var departure = Clock.DepartureOf(trip);
        var start = trip.Block.Find(TripFacts.Start);
        var from = start?.WordOf("title") ?? start?.Key;
        if (from is not null || departure is not null)
        {
            print.Wrapped(4, "  from ", from ?? "the start", departure is { } moment ? $", {moment}" : "");
        }

        var table = new Columns("leg to", "distance", departure is null ? "drive" : "arrives", "used", "left", "range", "leaves with");
        var day = departure?.Date;
        foreach (var row in TripTable.Of(trip))
        {
            table.Add(
                row.Leg.PlaceName,
                Cell(row, LegResults.Distance, row.Distance),
                row.Arrives is { } arrival ? ClockWords(arrival, day) : Cell(row, LegResults.Time, row.Time),
                Used(row),
                Cell(row, LegResults.EnergyLeft, row.Left),
                Cell(row, LegResults.RangeLeft, row.RangeLeft),
                Cell(row, StopResults.LeavingWith, row.LeavingWith));
            day = row.Arrives?.Date ?? day;
        }

        table.Print(print);
        PrintWhole(print);
        foreach (var answer in trip.AnswersOf(trip.Block))
        {
            print.Wrapped(4, "  ", AnswerSection.Name(answer.Unknown), answer.IsFound ? $" is {Cells.Tied(AnswerWords.Value(answer.Unknown, answer.Value))}, " : ": ", AnswerSection.Words(answer));
        }

        foreach (var row in TripTable.Of(trip).Where(row => row.IsPowerShort))
        {
            print.Wrapped(4, $"  {row.Leg.PlaceName}: the speed wished isn't held everywhere, the drive hasn't the power");
        }

        if (reasons.Count > 0)
        {
            print.Wrapped(4, "  ? ", reasons[0], reasons.Count > 1 ? $"; and {reasons.Count - 1} more" : "");
        }

        if (isEstimated)
        {
            print.Wrapped(4, $"  {Estimated} rests on estimates: ", Cells.Tied($"riglang show trip {trip.Parts.Trip.Name}"), " lists them");
        }
    }

    private void PrintWhole(Printout print)
    {
        var parts = new (IResult Result, string Phrase)[]
        {
            (TripResults.TotalDistance, "{0}"), (TripResults.DrivingTime, "{0} of driving"), (TripResults.StandingTime, "{0} standing"), (TripResults.TotalCost, "{0}"), (TripResults.LeastLeft, "never below {0}"),
        };
        var words = parts.Select(part => (part.Phrase, part.Result, Node: part.Result.Compute(trip)!)).Where(part => part.Node.IsComputed)
            .Select(part => string.Format(null, part.Phrase, Cells.Tied(units.Brief(part.Result, trip, part.Node.Value)))).ToList();
        if (words.Count > 0)
        {
            print.Wrapped(4, "  in all ", string.Join(", ", words));
        }
    }

    /// <summary>Out of the battery or out of the tank.</summary>
    private string Used(TripRow row)
    {
        var used = new IResult[] { LegResults.EnergyUsed, LegResults.FuelUsed }.Select(result => (Result: result, Node: result.Compute(row.Leg)!)).FirstOrDefault(pair => pair.Node.Applies);
        return Cell(row, used.Result, used.Node);
    }

    private string Cell(TripRow row, IResult? result, Node<double>? node)
    {
        if (result is null || node is not { Applies: true })
        {
            return "";
        }

        if (!node.IsComputed)
        {
            reasons.Add($"{row.Leg.PlaceName}: {Phrase.Small(result.Title)} {Shown.NotComputed(node)}");
            return "?";
        }

        isEstimated |= node.IsEstimated;
        return (node.IsEstimated ? Estimated : "") + units.Brief(result, node.Subject, node.Value);
    }

    /// <summary>The date stands there only when it isn't the day of the row above.</summary>
    private static string ClockWords(Moment moment, DateOnly? day)
    {
        var clock = moment.Clock is { } time ? Moment.WriteClock(time) : "";
        return day is null || day == moment.Date ? clock : $"{moment.Date.Month:00}-{moment.Date.Day:00} {clock}";
    }
}

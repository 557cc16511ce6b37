using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Curing;

/// <summary>What is in the battery or the tank where a leg begins.</summary>
internal static class ChargeLevers
{
    /// <summary>Of a new stop's figure, percent.</summary>
    private const int Step = 5;

    /// <summary>The charge or level with which the last place before the leg was left where either was taken on, upward.</summary>
    public static IEnumerable<Handle> More(Study study, Finding finding)
    {
        if (study is not TripStudy trip || LegOf(trip, finding) is not { } leg)
        {
            return [];
        }

        var isElectric = Drives.Engine(trip.Rig) is null;
        for (var before = leg.Before; before is not null; before = before.Before)
        {
            if (before.Stop is { } stop && stop.Block.Find(isElectric ? StopFacts.ChargeTo : StopFacts.RefuelTo) is { } line)
            {
                var place = before.PlaceName;
                return SettingLevers.OfLine(stop.Block, line.Declaration, value => (value, MostOf(line, value)), text => isElectric ? $"Charge to {text} at {place}" : $"Fill up to {text} at {place}");
            }
        }

        var start = isElectric ? TripFacts.StartCharge : TripFacts.StartFuel;
        return trip.Block.Find(start) is { } first
            ? SettingLevers.OfLine(trip.Block, start, value => (value, MostOf(first, value)), text => $"Leave {trip.StartName} with {text}")
            : [];
    }

    /// <summary>A stop at the nearest place before the leg at which none is written yet.</summary>
    public static IEnumerable<Insertion> Stops(TripStudy trip, Finding finding)
    {
        for (var place = LegOf(trip, finding)?.Before; place is not null; place = place.Before)
        {
            if (place is { Stop: null, Leg.Opener: { } opener } && opener.Place.Declaration == trip.Parts.Trip.Own.Syntax && trip.Compute(Charge.AtEnd, place) is { IsComputed: true, Value: > 0 } there)
            {
                yield return new Insertion(ChangesAt(trip, place, opener, there.Value));
                yield break;
            }
        }
    }

    private static IEnumerable<Change> ChangesAt(TripStudy trip, LegSubject place, Fact opener, double there)
    {
        var isElectric = Drives.Engine(trip.Rig) is null;
        var at = opener.Place.Declaration;
        var last = place.Leg.WithInner().SelectMany(block => block.Facts).Append(opener).Where(line => line.Place.Declaration == at).MaxBy(line => line.Place.Line)!;
        var outer = new string(' ', NewLine.IndentOf(opener));
        var inner = NewLine.Text(place.Leg, "");
        // A post that the trip uses elsewhere, else a slow one, which is found nearly anywhere.
        var charger = trip.Stops.Select(stop => stop.Block.Find(StopFacts.Charger)).OfType<Fact>().Select(line => line.Place.Text).FirstOrDefault() ?? "charger 11 kW ac";
        for (var percent = (int)(Math.Floor(there * 100 / Step) + 1) * Step; percent <= 100; percent += Step)
        {
            var lines = isElectric ? $"{inner}{charger}{inner}{StopFacts.ChargeTo.Keyword} {percent} %" : $"{inner}{StopFacts.RefuelTo.Keyword} {percent} %";
            var words = isElectric ? $"Stop at {place.PlaceName} and charge to {percent} % (`{charger}`, check it)" : $"Stop at {place.PlaceName} and fill up to {percent} %";
            yield return new Change(words, last.Place.EndOfLine, $"\n{outer}{TripFacts.Stop.Keyword} {place.Leg.Key}{lines}");
        }
    }

    private static LegSubject? LegOf(TripStudy trip, Finding finding) => trip.Legs.FirstOrDefault(leg => leg.Leg.Key == finding.About);

    private static double MostOf(Fact line, double now) => line.MeasureOf(Signature.ValueRole)!.Kind == QuantityKinds.Ratio ? 1 : 4 * now;
}

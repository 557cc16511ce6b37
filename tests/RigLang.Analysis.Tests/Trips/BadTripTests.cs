using System.Text;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Tests.Trips;

public class BadTripTests
{
    private static readonly string[] Odd =
    [
        "distance 0 km", "distance -5 km", "distance 1e9 km", "distance 999999999999 km", "distance ?", "distance", "distance 5 kg", "climb -3 m", "climb 99999 km", "climb 0 m", "descent 99999 km",
        "section 0 km at 5 %", "section -3 km at 5 %", "section 5 km at 900 %", "section 5 km at 90°", "section 5 km at 1:0", "section 5 km at -100 % speed 0 km/h", "section 9 km at 3 %", "section",
        "speed 0 km/h", "speed -9 km/h", "speed 99999 km/h", "speed 0.000001 km/h", "speed-limit 0 km/h", "altitude 99999 km", "altitude -9999 m", "air -300 °C", "air 99999 °C", "wind 99999 km/h head",
        "wind -20 km/h tail", "wind 20 km/h from 99999°", "heading 99999°", "delay -5 h", "delay 99999999 h", "surface grass", "gpx \"nowhere.gpx\"", "gpx \"\"", "gpx \"../../../../x.gpx\"", "gpx \"a.gpx\"",
        "expect arrival < 5 kg", "expect energy-left > 18 V",
    ];

    private static readonly string[] OddStops =
    [
        "charger 0 kW dc", "charger -5 kW ac", "charger 50 kW", "charger 50 kW dc", "charge-to 0 %", "charge-to 900 %", "charge-to 80 %", "charge-to", "charger-current 0 A", "charger-current 0.0001 A",
        "connect -5 min", "pause -5 h", "pause 99999999 h", "until 0001-01-01 00:00", "until 9999-12-31 23:59 -14:00", "until 2026-02-30 08:00", "local-time +14:00", "local-time +99:00", "refuel-to 80 %",
        "refuel-to 99999 L", "price 0 EUR/kWh", "price -5 EUR/kWh", "price 5 XYZ/kWh", "price 5 EUR/L", "uncouple -1 h",
    ];

    private static readonly string[] OddVehicles =
    [
        "usable-energy 0 kWh", "usable-energy 0.000001 kWh", "usable-energy 80 kWh", "drive-efficiency 0 %", "drive-efficiency 0.0001 %", "drive-efficiency 900 %", "regeneration -50 %", "regeneration 100 %",
        "motor-power 0.001 kW", "auxiliary -5 kW", "auxiliary 99999 kW", "charge-efficiency 0.1 %", "ac-power 0.001 kW", "charge-point 10 120 kW", "charge-point 50 % 0 kW", "charge-point 50 % -4 kW",
        "charge-point 0.5 80 kW", "charge-point 50 % 70 kW", "battery-voltage 0.01 V", "battery-voltage ?",
    ];

    /// <summary>Whatever is written: an answer or a word about what is missing, never an exception, an infinity or a hang.</summary>
    [Property(MaxTest = 300)]
    public Property Any_lines_give_answers_or_say_what_is_missing() => Prop.ForAll(
        Picks(Odd, 4).ToArbitrary(), Picks(OddStops, 4).ToArbitrary(), Picks(OddVehicles, 4).ToArbitrary(),
        (leg, stop, vehicle) =>
        {
            var lines = $"start-charge 80 %\ndepart 2026-10-03 08:15 +10:00\nleg a\n{Under(leg)}\nstop a\n{Under(stop)}\nleg b\n    distance 20 km\n    climb 0 m\n";
            var rig = string.Concat("vehicle v\n    mass 2400 kg\n    rolling 0.01\n    drag-area 0.8 m²\n    aboard nothing\n    electric\n", Under(vehicle, 8), "\nrig r\n    vehicle v\n    speed 80 km/h\n\n");
            var analysis = Study.Of(rig + Journey.Trip(lines), ("a.gpx", "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"/>"));
            var trip = Journey.Find(analysis);
            return AllResults(trip).All(IsAnAnswer) && analysis.Findings(Study.File).Remaining.All(finding => !finding.Message.Contains("NaN", StringComparison.Ordinal) && !finding.Message.Contains("unlimited", StringComparison.Ordinal));
        });

    [Fact]
    public void A_trip_of_ten_thousand_legs_needs_no_deep_stack()
    {
        var text = new StringBuilder("start-charge 100 %\ndepart 2026-10-03 08:15 +10:00\n");
        for (var i = 0; i < 10_000; i++)
        {
            text.Append("leg a").Append(i).Append("\n    distance 1 km\n    climb 5 m\n    descent 5 m\nstop a").Append(i).Append("\n    charger 11 kW ac\n    charge-to 100 %\n    connect 0 min\n");
        }

        var trip = Journey.Of(Journey.Electric, text.ToString());

        // The last first: from there everything before it has to be reckoned.
        trip.Legs[^1].Value("arrival").Should().BeGreaterThan(10_000 * 40);
        trip.Legs[^1].Value("energy-left").Should().BeGreaterThan(0.9);
        trip.Value("total-distance").Should().BeApproximately(1e7, 1);
    }

    [Fact]
    public void A_trip_without_legs_has_nothing_to_show()
    {
        var trip = Journey.Of(Journey.Electric, "start-charge 80 %\ndepart 2026-10-03 08:15 +10:00");

        AllResults(trip).Should().OnlyContain(node => IsAnAnswer(node));
        TripTable.Of(trip).Should().BeEmpty();
        trip.Result("total-time").Applies.Should().BeFalse();
    }

    [Fact]
    public void A_vehicle_without_a_drive_is_asked_for_one()
    {
        var leg = Journey.Leg("distance 50 km\nclimb 0 m", "vehicle v\n    mass 2000 kg\n    rolling 0.01\n    drag-area 0.7 m²\n    aboard nothing\nrig r\n    vehicle v\n    speed 80 km/h\n\n");

        leg.Result("energy-left").Missing!.Words.Should().Be("`electric` of vehicle v");
        leg.Value("leg-time").Should().BeApproximately(2250, 1e-6);
        leg.Trip.Result("total-fuel").Applies.Should().BeFalse();
    }

    [Fact]
    public void A_climb_that_no_power_gets_up_is_said_and_not_driven()
    {
        var rig = Journey.Electric.Replace("motor-power-lasting 250 kW", "motor-power-lasting 5 kW", StringComparison.Ordinal);
        var leg = Journey.Leg("section 5 km at 30 %", rig);

        leg.Result("leg-time").IsComputed.Should().BeFalse();
        leg.Result("energy-left").IsComputed.Should().BeFalse();
        Study.Findings(rig + Journey.Trip("start-charge 90 %\nleg a\n    section 5 km at 30 %")).Should().ContainSingle(finding => finding.Check.Slug == "power-runs-out")
            .Which.Message.Should().Contain("doesn't get up at all");
    }

    private static bool IsAnAnswer(Node node) => !node.IsComputed || double.IsFinite(node.Number);

    private static IEnumerable<Node<double>> AllResults(TripStudy trip) =>
        trip.Legs.SelectMany(leg => LegResults.Set.All.Select(result => Shown(result, leg)))
            .Concat(trip.Stops.SelectMany(stop => StopResults.Set.All.Select(result => Shown(result, stop))))
            .Concat(TripResults.Set.All.Select(result => Shown(result, trip)));

    private static Node<double> Shown(IResult result, ISubject subject)
    {
        var node = result.Compute(subject)!;
        result.Write(subject, node.Value, DisplaySystem.Metric).Should().NotBeNullOrEmpty();
        return node;
    }

    private static Gen<string[]> Picks(string[] from, int most) => Gen.Elements(from).ArrayOf().Select(picked => picked.Distinct().Take(most).ToArray());

    private static string Under(string[] lines, int indent = 4) => string.Join('\n', lines.Select(line => new string(' ', indent) + line));
}

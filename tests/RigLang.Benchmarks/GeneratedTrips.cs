using System.Globalization;
using System.Text;

namespace RigLang.Benchmarks;

/// <summary>Long trips that nobody drives: many chargers, and a track of many points.</summary>
internal static class GeneratedTrips
{
    public const int TrackPoints = 20_000;

    public const int TrackKilometres = 300;

    private const string Rig = """
        vehicle van
            mass 2400 kg
            aboard nothing
            electric
                usable-energy 80 kWh
                motor-power 200 kW
                drive-efficiency 88 %
                regeneration 60 %
                regeneration-power 80 kW
                auxiliary 1.2 kW
                charge-efficiency 95 %
                charge-point 10 % 140 kW
                charge-point 50 % 120 kW
                charge-point 100 % 15 kW

        trailer box
            mass 1600 kg
            aboard nothing

        rig pair
            vehicle van
            trailer box
            rolling 0.010
            drag-area 2.4 m²
            speed 90 km/h


        """;

    /// <summary>Eight legs with hills, seven chargers that close at night, hours for driving.</summary>
    public static string EightLegs()
    {
        var text = new StringBuilder(Rig).Append("trip long\n    rig pair\n    depart 2026-10-03 07:00\n    driving-hours 06:00 to 22:00\n    comfort-speed 100 km/h\n    start home\n    start-charge 90 %\n    reserve 10 %\n");
        for (var leg = 0; leg < 8; leg++)
        {
            text.Append(CultureInfo.InvariantCulture, $"    leg p{leg}\n        distance {70 + (10 * (leg % 3))} km\n        climb {200 + (40 * leg)} m\n        descent {180 + (50 * leg)} m\n        wind 10 km/h head\n        air 14 °C\n");
            if (leg < 7)
            {
                text.Append(CultureInfo.InvariantCulture, $"    stop p{leg}\n        charger {(leg % 2 == 0 ? 150 : 75)} kW dc\n        open 06:00 to 23:00\n        charge-to 70 %\n        other-charger 50 kW dc uncouple 0 min\n        uncouple 10 min\n");
            }
        }

        return text.ToString();
    }

    /// <summary>Three legs; the second follows the track, and its speed is what is changed.</summary>
    public static string WithTrack(int speed) => Rig + FormattableString.Invariant($"""
        trip far
            rig pair
            start home
            start-charge 95 %
            reserve 10 %
            leg first
                distance 40 km
                climb 100 m
                descent 80 m
            stop first
                charger 150 kW dc
                charge-to 100 %
            leg second
                gpx "far.gpx"
                speed {speed} km/h
                wind 12 km/h from 225°
            stop second
                charger 150 kW dc
                charge-to 80 %
            leg third
                distance 60 km
                climb 100 m
                descent 80 m

        """);

    /// <summary>A winding road of 300 km over hills of several lengths, its heights off by some metres as a receiver's are.</summary>
    public static string Track()
    {
        var random = new Random(3);
        var text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"generated\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n");
        // A degree of latitude is some 111 km.
        var step = TrackKilometres / 111.2 / (TrackPoints - 1) / 1.05;
        for (var point = 0; point < TrackPoints; point++)
        {
            var way = (double)point / TrackPoints * TrackKilometres;
            var height = 400 + (250 * Math.Sin(way / 30)) + (40 * Math.Sin(way / 3)) + (random.NextDouble() * 4);
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"{-34 + (step * point):F6}\" lon=\"{148 + (0.02 * Math.Sin(way / 4)):F6}\"><ele>{height:F1}</ele></trkpt>\n");
        }

        return text.Append("</trkseg></trk></gpx>\n").ToString();
    }
}

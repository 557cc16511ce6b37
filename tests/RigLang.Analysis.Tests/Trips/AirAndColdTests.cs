using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using RigLang.Analysis.Studies;

namespace RigLang.Analysis.Tests.Trips;

/// <summary>Legs reckoned anew from their lines by plain formulas, and what cold, heat and damp do to them.</summary>
public class AirAndColdTests
{
    private const double Gravity = 9.80665, KilowattHour = 3.6e6;

    /// <summary>4900 kg, rolling 0.010, 2.6 m², drive 88 %, regeneration 65 %, 1.5 kW: every section with its own height, air and wind.</summary>
    [Property(MaxTest = 40)]
    public Property A_leg_takes_what_plain_formulas_say() => Prop.ForAll(
        Gen.Choose(-80, 80).ArrayOf(4).ToArbitrary(), Gen.Choose(0, 359).ToArbitrary(), Gen.Choose(15, 24).ToArbitrary(),
        (grades, from, celsius) =>
        {
            var lines = grades.Select(grade => FormattableString.Invariant($"section 4 km at {grade / 10.0:0.0} %"));
            var leg = Leg($"{string.Join('\n', lines)}\nspeed 72 km/h\naltitude 300 m\nair {celsius} °C\nhumidity 80 %\nwind 18 km/h from {from}°\nheading 60°", "50 %");
            var angle = (from - 60) * Math.PI / 180;
            var (head, side) = (5 * Math.Cos(angle), 5 * Math.Sin(angle));
            double altitude = 300, battery = 0, mean = celsius - (0.0065 * grades.Sum(grade => 4000 * Math.Sin(Math.Atan(grade / 1000.0))) / 2);
            // From 15 to 25 °C nothing is lost; a leg may climb into air that is colder.
            var left = 1 - (0.12 * Math.Max(0, 15 - mean) / 21.7) - (0.04 * Math.Max(0, mean - 25) / 10);
            foreach (var grade in grades)
            {
                var slope = Math.Atan(grade / 1000.0);
                var density = Humid(altitude + (2000 * Math.Sin(slope)), celsius - (0.0065 * (altitude + (2000 * Math.Sin(slope)) - 300)), 0.8);
                var force = (4900 * Gravity * ((0.010 * Math.Cos(slope)) + Math.Sin(slope)))
                    + (0.5 * density * 2.6 * (20 + head) * Math.Sqrt(((20 + head) * (20 + head)) + (side * side)));
                battery += (4000 * (force > 0 ? force / (0.88 * left) : force * 0.65 * left)) + (1500 * 200);
                altitude += 4000 * Math.Sin(slope);
            }

            return Math.Abs(leg.Value("energy-used") - battery) < 2000 + (1e-4 * Math.Abs(battery));
        });

    /// <summary>A square of 20 km sides with the wind across it: the wind meets each side from elsewhere.</summary>
    [Fact]
    public void Wind_is_a_vector_on_the_course_of_each_stretch()
    {
        const double step = 0.005, metresNorth = 111_132.954 - 559.822 + 1.175;
        List<(double North, double East)> points = [(45, 10)];
        foreach (var (north, east) in new[] { (1, 0), (0, 1), (-1, 0), (0, -1) })
        {
            points.AddRange(Enumerable.Range(0, 36).Select(_ => points[^1]).Select((_, i) => (points[^1].North + (north * step * (i + 1)), points[^1].East + (east * step * (i + 1)))));
        }

        var gpx = "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>"
            + string.Concat(points.Select(point => string.Create(CultureInfo.InvariantCulture, $"<trkpt lat=\"{point.North}\" lon=\"{point.East}\"><ele>800</ele></trkpt>"))) + "</trkseg></trk></gpx>";
        var leg = Journey.Leg("gpx \"a.gpx\"\nspeed 90 km/h\nair 20 °C\nwind 36 km/h from 30°", Journey.Electric, ("a.gpx", gpx));

        double energy = 0, length = 0;
        for (var i = 1; i < points.Count; i++)
        {
            // On a sphere that fits the ellipsoid here: 111 132 m a degree north at 45°, 78 847 m a degree east, shrinking with the cosine.
            var north = (points[i].North - points[i - 1].North) * metresNorth * 1.00503;
            var east = (points[i].East - points[i - 1].East) * 78_846.8 * Math.Cos(points[i].North * Math.PI / 180) / Math.Cos(Math.PI / 4);
            var (distance, course) = (Math.Sqrt((north * north) + (east * east)), Math.Atan2(east, north));
            var (head, side) = (10 * Math.Cos((30 * Math.PI / 180) - course), 10 * Math.Sin((30 * Math.PI / 180) - course));
            var density = 101325 * Math.Pow(1 - (0.0065 * 800 / 288.15), 5.255880) / (287.05287 * 293.15);
            var force = (4900 * Gravity * 0.010) + (0.5 * density * 2.6 * (25 + head) * Math.Sqrt(((25 + head) * (25 + head)) + (side * side)));
            energy += (distance * force / 0.88) + (1500 * distance / 25);
            length += distance;
        }

        leg.Value("leg-distance").Should().BeApproximately(length, 0.002 * length);
        leg.Value("energy-used").Should().BeApproximately(energy, 0.003 * energy);
        leg.Value("energy-used").Should().BeGreaterThan(1.02 * Journey.Leg("gpx \"a.gpx\"\nspeed 90 km/h\nair 20 °C\nwind 0 km/h head", Journey.Electric, ("a.gpx", gpx)).Value("energy-used"), "a wind that turns round costs more than it saves");
    }

    /// <summary>The AAA's five vehicles lost 12 % of their range at −6.7 °C without heating, 4 % at 35 °C.</summary>
    [Theory]
    [InlineData("-6.7", 0.88)]
    [InlineData("35", 0.96)]
    [InlineData("20", 1)]
    public void Cold_and_heat_take_from_the_range_beside_the_cabin(string celsius, double left)
    {
        // In air of one density whatever its temperature, by altitude: the density is divided out by hand.
        double At(string air, string line) => Journey.Leg($"distance 100 km\nclimb 0 m\nspeed 90 km/h\naltitude 0 m\nair {air} °C\nwind 0 km/h head", Rig(line)).Value("energy-used") - (1500 * 4000);

        (At(celsius, "cold-loss 0 %") / At(celsius, "")).Should().BeApproximately(left, 1e-9);
        (At(celsius, "cold-loss 6 %") / At(celsius, "cold-loss 0 %")).Should().BeApproximately(1 / (1 - ((1 - left) / 2)), 1e-9);
    }

    [Fact]
    public void Mild_air_asks_for_no_estimate_of_the_cold()
    {
        string Lines(int celsius) => $"distance 100 km\nclimb 0 m\naltitude 0 m\nair {celsius} °C\nwind 0 km/h head";

        Journey.Leg(Lines(20)).Result("energy-used").IsEstimated.Should().BeFalse();
        Journey.Leg(Lines(5)).Result("energy-used").IsEstimated.Should().BeTrue();
        Journey.Leg(Lines(5), Rig("cold-loss 10 %")).Result("energy-used").IsEstimated.Should().BeFalse();
    }

    [Theory]
    [InlineData("15", 1)]
    [InlineData("10", 1)]
    [InlineData("5", 0.7)]
    [InlineData("0", 0.4)]
    [InlineData("-15", 0.4)]
    public void A_cold_battery_charges_slowly(string celsius, double share)
    {
        double Time(string rig) => Journey.Of(rig, $"start-charge 20 %\nleg a\n    distance 1 m\n    climb 0 m\n    air {celsius} °C\nstop a\n    charger 350 kW dc\n    charge-to 50 %").Legs[0].Stop!.Value("charge-time");

        // 24 kWh at 150 kW, warm.
        Time(Rig("cold-charging 40 %")).Should().BeApproximately(24 * 3600 / (150 * share), 1);
        Time(Rig("")).Should().BeApproximately(24 * 3600 / 150.0, 1);
    }

    [Fact]
    public void Where_nobody_says_how_the_cold_slows_charging_it_is_marked()
    {
        StopSubject Stop(string celsius, string line) => Journey.Of(Rig($"cold-loss 10 %{line}"), $"start-charge 20 %\nleg a\n    distance 1 m\n    climb 0 m\n    altitude 0 m\n    air {celsius} °C\n    wind 0 km/h head\nstop a\n    charger 350 kW dc\n    charge-to 50 %").Legs[0].Stop!;

        Stop("5", "").Result("charge-time").IsEstimated.Should().BeTrue();
        Stop("12", "").Result("charge-time").IsEstimated.Should().BeFalse();
        Stop("5", "\n        cold-charging 60 %").Result("charge-time").IsEstimated.Should().BeFalse();
    }

    /// <summary>Density of saturated air at 30 °C and 101 325 Pa by a mixture of ideal gases is some 1.6 % below that of dry air.</summary>
    [Fact]
    public void Damp_air_is_thinner()
    {
        double Energy(string line) => Journey.Leg($"distance 100 km\nclimb 0 m\naltitude 0 m\nair 24 °C\nwind 0 km/h head{line}").Value("energy-used");
        var drag = 0.5 * 2.6 * 25 * 25 * 100_000 / 0.88;

        (Energy("") - Energy("\nhumidity 100 %")).Should().BeApproximately(drag * (Humid(0, 24, 0) - Humid(0, 24, 1)), 0.001 * drag);
        Energy("\nhumidity 100 %").Should().BeLessThan(Energy("\nhumidity 40 %"));
    }

    [Theory]
    [InlineData("petrol", 8.988, 43.2)]
    [InlineData("e85", 6.325, double.NaN)]
    [InlineData("lpg", 6.441, 46.0)]
    public void Fuels_differ_by_their_heating_values(string fuel, double kilowattHoursPerLitre, double megajoulesPerKilogram)
    {
        LegSubject Leg(string name) => Journey.Leg("distance 100 km\nclimb 0 m\nwind 0 km/h head", Journey.Petrol.Replace("fuel petrol\n", $"fuel {name}\n", StringComparison.Ordinal)
            .Replace("40 L petrol", $"40 L {name}", StringComparison.Ordinal).Replace("        consumption 5.4 L/100km\n        consumption-speed 90 km/h\n", "        engine-efficiency 36 %\n", StringComparison.Ordinal));

        var energy = Leg("petrol").Value("fuel-used") * 1000 * 8.988;
        (Leg(fuel).Value("fuel-used") * 1000 * kilowattHoursPerLitre).Should().BeApproximately(energy, 1e-6 * energy, "the engine asks for the same heat");
        if (!double.IsNaN(megajoulesPerKilogram))
        {
            (Leg(fuel).Value("fuel-mass") * megajoulesPerKilogram / 3.6).Should().BeApproximately(energy, 1e-6 * energy);
        }
    }

    [Fact]
    public void Natural_gas_is_told_by_mass_and_refused_in_litres()
    {
        var leg = Journey.Leg("distance 100 km\nclimb 0 m\nwind 0 km/h head", Journey.Petrol.Replace("fuel petrol\n", "fuel cng\n", StringComparison.Ordinal));
        var petrol = Journey.Leg("distance 100 km\nclimb 0 m\nwind 0 km/h head", Journey.Petrol.Replace("        consumption 5.4 L/100km\n        consumption-speed 90 km/h\n", "", StringComparison.Ordinal));

        leg.Value("fuel-mass").Should().BeApproximately(petrol.Value("fuel-mass") * 43.2 / 45.1, 1e-6);
        leg.Result("fuel-used").Refusal.Should().Contain("fuel-mass");
    }

    [Fact]
    public void A_track_tells_what_smoothing_does_to_its_hills()
    {
        // Two hills of 120 m, heights that wander by 3 m.
        var noise = new Random(11);
        var heights = Enumerable.Range(0, 201).Select(i => 200 + (60 * (1 - Math.Cos(i * 4 * Math.PI / 200))) + (noise.NextDouble() * 6) - 3).ToArray();
        var gpx = "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>"
            + string.Concat(heights.Select((height, i) => string.Create(CultureInfo.InvariantCulture, $"<trkpt lat=\"{45 + (i * 0.0009)}\" lon=\"10\"><ele>{height}</ele></trkpt>"))) + "</trkseg></trk></gpx>";
        var leg = Journey.Leg("gpx \"a.gpx\"\nair 20 °C\nwind 0 km/h head", Journey.Electric, ("a.gpx", gpx));

        leg.Value("leg-climb").Should().BeLessThan(241).And.BeGreaterThan(240 - leg.Value("climb-error") - 6);
        leg.Value("climb-error").Should().BeInRange(16, 40);
        leg.Value("recorded-climb").Should().BeGreaterThan(leg.Value("leg-climb") + 50);
        Journey.Leg("section 4 km at 3 %").Result("climb-error").Applies.Should().BeFalse();
    }

    private static LegSubject Leg(string lines, string charge) =>
        Journey.Of(Journey.Electric, $"start-charge {charge}\nleg a\n    {lines.Replace("\n", "\n    ", StringComparison.Ordinal)}").Legs[0];

    private static string Rig(string line) => line == "" ? Journey.Electric : Journey.Electric.Replace("        auxiliary 1.5 kW\n", $"        auxiliary 1.5 kW\n        {line}\n", StringComparison.Ordinal);

    /// <summary>Two ideal gases; saturation by Tetens' formula, which is not the one that the library uses.</summary>
    private static double Humid(double altitude, double celsius, double humidity)
    {
        var vapour = humidity * 610.78 * Math.Exp(17.27 * celsius / (celsius + 237.3));
        var pressure = 101325 * Math.Pow(1 - (0.0065 * altitude / 288.15), 5.255880);
        return ((pressure - vapour) / (287.055 * (celsius + 273.15))) + (vapour / (461.5 * (celsius + 273.15)));
    }
}

using RigLang.Analysis.Studies;

namespace RigLang.Analysis.Tests.Tyres;

/// <summary>A trailer of 1100 kg, 100 kg of it on the tongue, so that its one axle carries 1000 kg.</summary>
public sealed class TyreResultsTests
{
    [Theory]
    // Load index table of ISO 4000-1, ETRTO and UN R30; shares of (2.4 / 2.9)^n by two independent computations.
    [InlineData("P235/75R15 105S", 925, 0.90972)]
    [InlineData("235/75R15 105S", 925, 0.85951)]
    [InlineData("195/70R15C 104/102R", 900, 0.85951)]
    [InlineData("ST225/75R15 117M E", 1285, 0.88426)]
    [InlineData("LT225/75R16 115/112Q E", 1215, 0.88426)]
    public void Below_its_rated_pressure_a_tyre_carries_less(string tyre, double rating, double share)
    {
        var axle = Axle($"tyres {tyre}\npressure 240 kPa\nrated-pressure 290 kPa");

        axle.Value("tyre-rated-load").Should().Be(rating);
        (axle.Value("tyre-capacity") / rating).Should().BeApproximately(share, 1e-5);
    }

    [Theory]
    // Points of the TRA yearbook's load tables, values from memory. The exponents lie within 3 % of them, and on the side of caution for ST tyres.
    [InlineData("P235/75R15 105S", 26, 35, 1753.0 / 2028)]
    [InlineData("LT225/75R16 115/112Q E", 50, 80, 1945.0 / 2680)]
    [InlineData("ST225/75R15 117M E", 50, 80, 2150.0 / 2830)]
    [InlineData("ST225/75R15 117M E", 65, 80, 2540.0 / 2830)]
    public void The_loss_agrees_with_load_tables(string tyre, double pressure, double rated, double share)
    {
        var axle = Axle($"tyres {tyre}\npressure {pressure} psi\nrated-pressure {rated} psi");

        (axle.Value("tyre-capacity") / axle.Value("tyre-rated-load") / share).Should().BeApproximately(1, 0.031);
    }

    [Fact]
    public void More_than_the_rated_pressure_carries_no_more() =>
        Axle("tyres 195/70R15C 104/102R\npressure 500 kPa\nrated-pressure 450 kPa").Value("tyre-capacity").Should().Be(900);

    [Fact]
    public void The_axle_load_is_shared_by_its_tyres()
    {
        var axle = Axle("tyres 195/70R15C 104/102R\npressure 450 kPa\nrated-pressure 450 kPa");

        axle.Value("tyre-load").Should().BeApproximately(500, 1e-9);
        axle.Value("tyre-reserve").Should().BeApproximately(400, 1e-9);
        axle.Value("tyre-share").Should().BeApproximately(500.0 / 900, 1e-12);
    }

    [Fact]
    public void Four_wheels_are_rated_by_the_second_load_index()
    {
        var axle = Axle("wheels 4\ntyres 195/70R15C 104/102R\npressure 450 kPa\nrated-pressure 450 kPa");

        axle.Value("tyre-load").Should().BeApproximately(250, 1e-9);
        axle.Value("tyre-rated-load").Should().Be(850, "load index 102 holds for dual fitment");
    }

    [Fact]
    public void Four_wheels_without_a_second_load_index_are_not_computed() =>
        Axle("wheels 4\ntyres 195/70R15 97T\npressure 250 kPa").Result("tyre-rated-load").Missing!.Fact.Keyword.Should().Be("tyres");

    [Fact]
    public void The_least_pressure_just_carries_the_load()
    {
        const string tyre = "tyres 195/70R15C 104/102R\nrated-pressure 450 kPa\npressure ";
        var least = Axle(tyre + "450 kPa").Value("tyre-least-pressure");

        Axle($"{tyre}{least / 1000:F6} kPa").Value("tyre-share").Should().BeApproximately(1, 1e-6);
    }

    [Fact]
    public void No_pressure_is_named_where_none_is_enough() =>
        Axle("tyres 155/70R13 75N\npressure 260 kPa\nrated-pressure 260 kPa").Result("tyre-least-pressure").Applies.Should().BeFalse("load index 75 is 387 kg, and each tyre carries 500");

    [Theory]
    [InlineData("155/70R13 75N", 140, false)]
    [InlineData("195/70R15C 104/102R", 170, false)]
    [InlineData("185/65R15 88H", 210, false)]
    // Common practice, value from memory: 65 mph (105 km/h) where an ST tyre shows no speed symbol.
    [InlineData("ST225/75R15", 104.60736, true)]
    public void The_speed_symbol_says_how_fast(string tyre, double kilometresPerHour, bool isEstimated)
    {
        var node = Axle($"tyres {tyre}").Result("tyre-top-speed");

        (node.Value * 3.6).Should().BeApproximately(kilometresPerHour, 1e-9);
        node.IsEstimated.Should().Be(isEstimated);
    }

    [Theory]
    [InlineData("tyre-rated-load")]
    [InlineData("tyre-capacity")]
    [InlineData("tyre-top-speed")]
    public void A_size_without_service_description_carries_nobody_knows_what(string result) =>
        Axle("tyres 195/70R15\npressure 250 kPa").Result(result).Missing!.Fact.Keyword.Should().Be("tyres");

    [Fact]
    public void An_unknown_pressure_is_asked_for() =>
        Axle("tyres 195/70R15 97T").Result("tyre-capacity").Missing!.Fact.Keyword.Should().Be("pressure");

    [Fact]
    public void A_guessed_rated_pressure_marks_what_rests_on_it()
    {
        Axle("tyres 195/70R15 97T\npressure 200 kPa").Result("tyre-share").IsEstimated.Should().BeTrue();
        Axle("tyres 195/70R15 97T\npressure 200 kPa\nrated-pressure 250 kPa").Result("tyre-share").IsEstimated.Should().BeFalse();
    }

    [Theory]
    // 49 CFR 571.110 S4.2.2.2: a passenger-car tyre's rating is divided by 1.10 on a trailer, truck or multipurpose vehicle.
    [InlineData("us", "195/70R15 97T", 730 / 1.10)]
    [InlineData("us", "P195/70R15 97T", 730 / 1.10)]
    [InlineData("us", "ST225/75R15 117M E", 1285)]
    [InlineData("us", "195/70R15C 104/102R", 900)]
    [InlineData("de", "195/70R15 97T", 730)]
    [InlineData("none", "195/70R15 97T", 730)]
    public void A_car_tyre_on_a_trailer_is_derated_by_the_us_rules_alone(string rules, string tyre, double rating) =>
        Axle($"tyres {tyre}", $"rules {rules}").Value("tyre-rated-load").Should().BeApproximately(rating, 1e-9);

    [Theory]
    [InlineData("body suv", 800 / 1.10, false)]
    [InlineData("body pick-up", 800 / 1.10, false)]
    [InlineData("body saloon", 800, false)]
    [InlineData("", 800, true)]
    public void Under_a_vehicle_the_us_rules_ask_what_it_is(string body, double rating, bool isEstimated)
    {
        var axle = Study.Rig(Text("", "rules us", body)).VehicleAxles.Single(axle => axle.Axle.Key == "rear");

        axle.Value("tyre-rated-load").Should().BeApproximately(rating, 1e-9);
        axle.Result("tyre-rated-load").IsEstimated.Should().Be(isEstimated);
    }

    [Fact]
    public void The_rig_is_as_good_as_its_hardest_worked_tyre()
    {
        var rig = Study.Rig(Text("tyres 155/70R13 75N\npressure 260 kPa\nrated-pressure 260 kPa"));

        rig.Value("tyre-use").Should().BeApproximately(500.0 / 387, 1e-9, "the trailer's tyre, not the vehicle's");
    }

    [Fact]
    public void An_axle_whose_tyres_nobody_said_is_left_out()
    {
        // The vehicle's rear axle: 1000 kg and 100 kg on the ball at a quarter of the wheelbase behind it; two tyres of 800 kg.
        Study.Rig(Text("")).Value("tyre-use").Should().BeApproximately(1125.0 / 2 / 800, 1e-9);
    }

    private static AxleSubject Axle(string lines, string rigLine = "") => Study.Rig(Text(lines, rigLine)).TrailerAxles.Single();

    private static string Text(string axleLines, string rigLine = "", string vehicleLine = "") => $"""
        vehicle v
            wheelbase 4.00 m
            overhang 1.00 m
            {vehicleLine}
            axle front
                carries 900 kg
            axle rear
                carries 1000 kg
                tyres 225/60R17 100H
                pressure 250 kPa
                rated-pressure 250 kPa
            aboard nothing

        trailer t
            mass 1100 kg
            tongue 100 kg
            coupling-to-axle 4.00 m
            axle only
        {string.Join('\n', axleLines.Split('\n').Select(line => "        " + line))}
            aboard nothing

        rig r
            vehicle v
            trailer t
            {rigLine}
        """;
}

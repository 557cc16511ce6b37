namespace RigLang.Analysis.Tests.Trips;

public class RoadLoadTests
{
    /// <summary>Computed by two independent formulations: the train of 4900 kg, rolling 0.010, 2.60 m², air 1.225 kg/m³.</summary>
    [Theory]
    [InlineData(80, 1266.95)]
    [InlineData(90, 1475.84)]
    [InlineData(100, 1709.31)]
    [InlineData(110, 1967.35)]
    public void A_train_is_held_back_by_rolling_and_air(double speed, double force)
    {
        var rig = Study.Rig(Journey.Electric.Replace("speed 90 km/h", FormattableString.Invariant($"speed {speed} km/h"), StringComparison.Ordinal));

        rig.Value("road-load").Should().BeApproximately(force, 0.01);
        rig.Value("wheel-power").Should().BeApproximately(force * speed / 3.6, 0.5);
    }

    /// <summary>The same, the vehicle of 2400 kg alone with 0.75 m².</summary>
    [Theory]
    [InlineData(80, 462.21)]
    [InlineData(110, 664.25)]
    public void So_is_a_vehicle_alone(double speed, double force) =>
        Study.Rig(FormattableString.Invariant($"""
            vehicle v
                mass 2400 kg
                rolling 0.010
                drag-area 0.75 m²
                aboard nothing
            rig r
                vehicle v
                speed {speed} km/h
            """)).Value("road-load").Should().BeApproximately(force, 0.01);

    /// <summary>US EPA certification data, model year 2022: battery saloon, 4250 lb, A 34.98 lbf, B 0.0865 lbf/mph, C 0.0148 lbf/mph², published 10.2 hp at 50 mph.</summary>
    [Fact]
    public void Bench_figures_give_the_published_power_at_the_bench_s_air()
    {
        var leg = Journey.Leg("distance 10 mi\nspeed 50 mph\nclimb 0 m\nwind 0 km/h head\nair 28.55 °C", """
            vehicle v
                mass 4250 lb
                road-load-constant 34.98 lbf
                road-load-linear 0.0865 lbf/mph
                road-load-square 0.0148 lbf/mph²
                aboard nothing
                electric
                    usable-energy 80 kWh
                    drive-efficiency 98 %
                    cold-loss 0 %
                    auxiliary 0 kW
            rig r
                vehicle v

            """);

        (leg.Value("energy-used") * 0.98 / leg.Value("leg-time") / 745.69987).Should().BeApproximately(10.2, 0.05);
    }

    [Fact]
    public void A_heavier_load_rolls_harder_on_bench_figures_and_meets_the_same_air()
    {
        string Bench(string load) => $"""
            vehicle v
                mass 2000 kg
                road-load-constant 150 N
                road-load-linear 0 N·s/m
                road-load-square 0.4 N·s²/m²
                aboard nothing
            load l
                on vehicle
                    item bags {load} at 2 m behind front-axle
            rig r
                vehicle v
                load l
                speed 20 m/s
            """;

        var air = 1.225 / 1.17 * 0.4 * 400;
        Study.Rig(Bench("0 kg")).Value("road-load").Should().BeApproximately(150 + air, 0.1);
        Study.Rig(Bench("200 kg")).Value("road-load").Should().BeApproximately(165 + air, 0.1);
    }

    [Fact]
    public void A_bench_figure_that_is_missing_is_asked_for()
    {
        var rig = Study.Rig("vehicle v\n    mass 2000 kg\n    road-load-constant 150 N\n    aboard nothing\nrig r\n    vehicle v\n    speed 20 m/s\n");

        rig.Result("road-load").Missing!.Words.Should().Be("`road-load-linear` of vehicle v");
    }

    /// <summary>EU Joint Research Centre defaults for Regulation (EU) 2017/1151: a roof box multiplies the drag area by 1.2.</summary>
    [Fact]
    public void Anything_on_the_roof_counts_as_a_box()
    {
        string Loaded(string where) => $"""
            vehicle v
                mass 1300 kg
                rolling 0.010
                drag-area 0.7 m²
                aboard nothing
            load l
                on vehicle
                    item box 40 kg at 1.5 m behind front-axle{where}
            rig r
                vehicle v
                load l
                speed 90 km/h
            """;

        Study.Rig(Loaded("")).Value("combination-drag").Should().BeApproximately(0.7, 1e-9);
        Study.Rig(Loaded(" on roof")).Value("combination-drag").Should().BeApproximately(0.84, 1e-9);
    }

    [Theory]
    [InlineData("body box", 0.55 * 0.84 * 2.3 * 2.6)]
    [InlineData("body rounded", 0.35 * 0.84 * 2.3 * 2.6)]
    [InlineData("body flat", 0.8 * 1.1)]
    [InlineData("body open", 0.8 * 1.2)]
    [InlineData("body boat", 0.8 * 1.3)]
    [InlineData("drag-area 1.65 m²", 0.8 + 1.65)]
    [InlineData("drag-coefficient 0.3\n    frontal-area 5.5 m²", 0.8 + 1.65)]
    public void A_train_that_was_not_measured_is_put_together_and_marked(string trailerLine, double expected)
    {
        var rig = Study.Rig($"""
            vehicle v
                mass 2400 kg
                drag-area 0.8 m²
                aboard nothing
            trailer t
                mass 1500 kg
                width 2.3 m
                height 2.6 m
                {trailerLine}
                aboard nothing
            rig r
                vehicle v
                trailer t
                speed 90 km/h
            """);

        rig.Value("combination-drag").Should().BeApproximately(expected, 1e-9);
        rig.Result("combination-drag").IsEstimated.Should().BeTrue();
    }

    [Fact]
    public void A_small_box_in_the_wake_still_adds_something() =>
        Study.Rig("""
            vehicle v
                mass 2400 kg
                drag-area 1.2 m²
                aboard nothing
            trailer t
                mass 500 kg
                body box
                width 1.2 m
                height 1.3 m
                aboard nothing
            rig r
                vehicle v
                trailer t
                speed 90 km/h
            """).Value("combination-drag").Should().BeApproximately(1.32, 1e-9);

    [Fact]
    public void Rolling_follows_from_the_pressures_and_the_masses()
    {
        // 0.005 + (0.01 + 0.0095 v²) ÷ p, v in 100 km/h (engineeringtoolbox.com, equation 3), by the masses of the two.
        double Coefficient(double bar) => 0.005 + ((0.01 + (0.0095 * 0.81)) / bar);
        var rig = Study.Rig("""
            vehicle v
                mass 2400 kg
                aboard nothing
                axle front
                    pressure 2.5 bar
                axle rear
                    pressure 2.5 bar
            trailer t
                mass 1200 kg
                aboard nothing
                axle a
                    pressure 4 bar
            rig r
                vehicle v
                trailer t
                speed 90 km/h
            """);

        rig.Value("rolling-coefficient").Should().BeApproximately((Coefficient(2.5) * 2 / 3) + (Coefficient(4) / 3), 1e-9);
        rig.Result("rolling-coefficient").IsEstimated.Should().BeTrue();
    }

    [Fact]
    public void Gravel_and_grass_roll_harder_than_asphalt_and_are_marked()
    {
        double On(string surface) => Study.Rig(Journey.Electric + $"    surface {surface}\n").Value("rolling-coefficient");

        On("asphalt").Should().Be(0.010);
        On("gravel").Should().BeApproximately(0.020, 1e-12);
        On("grass").Should().BeGreaterThan(On("gravel"));
        Study.Rig(Journey.Electric + "    surface gravel\n").Result("road-load").IsEstimated.Should().BeTrue();
    }

    [Fact]
    public void The_mass_that_rolls_is_that_of_the_axle_loads()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 50 %\nspeed 90 km/h\nrolling 0.01\ndrag-area 2.6 m²"));

        var rolling = rig.Value("road-load") - (0.5 * 1.225 * 2.6 * 625);
        (rolling / 9.80665 / 0.01).Should().BeApproximately(rig.Value("train-load"), 0.01);
    }

    [Fact]
    public void Energy_needs_no_lengths()
    {
        var rig = Study.Rig(Journey.Electric);

        rig.Result("train-load").IsComputed.Should().BeFalse();
        rig.Value("level-range").Should().BeGreaterThan(0);
    }
}

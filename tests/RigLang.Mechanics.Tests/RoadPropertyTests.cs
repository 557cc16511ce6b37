using FsCheck.Xunit;
using static RigLang.Mechanics.Tests.Numbers;

namespace RigLang.Mechanics.Tests;

public sealed class RoadPropertyTests
{
    [Property]
    public void Forces_scale_with_mass_area_density_and_the_square_of_speed(int mass, int area, int speed, int scale)
    {
        double m = Between(mass, 800, 6000), a = Between(area, 0.5, 3), v = Between(speed, 2, 40), k = Between(scale, 0.5, 2);
        var load = new RoadLoad(m, new Rolling(0.011), a);
        (load with { Mass = k * m }).RollingForce(v).Should().BeApproximately(k * load.RollingForce(v), 1e-9 * m);
        (load with { DragArea = k * a }).AirForce(v, 1.2).Should().BeApproximately(k * load.AirForce(v, 1.2), 1e-9 * m);
        load.AirForce(v, k * 1.2).Should().BeApproximately(k * load.AirForce(v, 1.2), 1e-9 * m);
        load.AirForce(k * v, 1.2).Should().BeApproximately(k * k * load.AirForce(v, 1.2), 1e-9 * m);
    }

    [Property]
    public void Up_and_down_the_same_hill_take_twice_the_level(int grade, int speed)
    {
        double g = Between(grade, 0, 0.25), v = Between(speed, 0, 40), cosine = 1 / Math.Sqrt(1 + (g * g));
        var load = new RoadLoad(3000, new Rolling(0.012), 2);
        (load.Force(v, 1.2, grade: g) + load.Force(v, 1.2, grade: -g)).Should().BeApproximately(2 * ((load.RollingForce(v) * cosine) + load.AirForce(v, 1.2)), 1e-6);
    }

    [Property]
    public void A_headwind_there_and_back_never_pays(int speed, int wind)
    {
        double v = Between(speed, 5, 40), w = Between(wind, 0, 15);
        var load = new RoadLoad(3000, new Rolling(0.012), 2);
        (load.AirForce(v, 1.2, new Wind(w, 0)) + load.AirForce(v, 1.2, new Wind(-w, 0))).Should().BeGreaterThanOrEqualTo((2 * load.AirForce(v, 1.2)) - 1e-9);
    }

    [Property]
    public void A_bench_road_load_and_its_free_form_agree_at_the_bench(int f0, int f1, int f2, int speed)
    {
        DynamometerRoadLoad bench = new(Between(f0, 80, 300), Between(f1, -4, 6), Between(f2, 0.2, 0.7));
        double v = Between(speed, 0, 40);
        bench.ToRoadLoad(1900).Force(v, DynamometerRoadLoad.ReferenceDensity).Should().BeApproximately(bench.Force(v), 1e-6);
    }

    [Property]
    public void Two_units_roll_between_the_better_and_the_worse(int one, int other, int share, int speed)
    {
        Rolling a = Rolling.FromPressure(Between(one, 1.8e5, 8e5)), b = Rolling.FromPressure(Between(other, 1.8e5, 8e5));
        double v = Between(speed, 0, 40), load = Between(share, 0, 1), mean = Rolling.Mean(a, load, b, 1 - load).At(v);
        mean.Should().BeInRange(Math.Min(a.At(v), b.At(v)) - 1e-12, Math.Max(a.At(v), b.At(v)) + 1e-12);
    }

    [Property]
    public void More_pressure_rolls_easier_and_more_speed_harder(int pressure, int more, int speed)
    {
        double p = Between(pressure, 1.5e5, 7e5), v = Between(speed, 1, 40);
        Rolling.FromPressure(p + Between(more, 1e4, 2e5)).At(v).Should().BeLessThan(Rolling.FromPressure(p).At(v));
        Rolling.FromPressure(p).At(v + 1).Should().BeGreaterThan(Rolling.FromPressure(p).At(v));
    }

    [Fact]
    public void A_worse_letter_on_the_label_rolls_no_easier()
    {
        foreach (LabelledTyre tyre in Enum.GetValues<LabelledTyre>())
        {
            double[] limits = [.. "ABCDEFG".Select(letter => TyreLabel.RollingLimit(tyre, letter))];
            limits.Should().BeInAscendingOrder();
        }

        TyreLabel.RollingLimit(LabelledTyre.Car, 'H').Should().Be(double.NaN);
        TyreLabel.RollingLimit((LabelledTyre)9, 'A').Should().Be(double.NaN);
    }
}

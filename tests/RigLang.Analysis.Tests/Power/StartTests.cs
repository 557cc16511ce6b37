using RigLang.Analysis.Results.Power;
using static RigLang.Analysis.Tests.Power.PullingRig;

namespace RigLang.Analysis.Tests.Power;

public sealed class StartTests
{
    /// <summary>At the steepest grade the friction of the driven axle holds just what the start takes; both written out here by moments of their own.</summary>
    [Theory]
    [InlineData("front")]
    [InlineData("rear")]
    [InlineData("all")]
    public void Grip_is_used_up_on_the_steepest_grade(string drive)
    {
        var grade = Study.Rig(Of(drive)).Value("launch-grade-grip");

        var angle = Math.Atan(grade);
        var (need, front, rear) = OnGrade(angle);
        var driven = drive switch { "front" => front, "rear" => rear, _ => front + rear };
        grade.Should().BeInRange(0.05, 0.8);
        (0.8 * driven).Should().BeApproximately(need, 1e-6 * need);
    }

    /// <summary>Computed by two independent formulations: on 12 % a front drive uses 0.799 of a friction of 0.8, so with 0.8 × 0.799 twelve per cent is the limit.</summary>
    [Theory]
    [InlineData("front", 0.799)]
    [InlineData("rear", 0.479)]
    [InlineData("all", 0.299)]
    public void On_twelve_per_cent_as_the_reference_has_it(string drive, double use) =>
        Study.Rig(Of(drive).Replace("assume friction 0.8", FormattableString.Invariant($"assume friction {0.8 * use}"))).Value("launch-grade-grip").Should().BeApproximately(0.12, 2e-4);

    [Fact]
    public void Pull_is_torque_through_the_reduction_against_the_weight()
    {
        var force = 400 * 10 / Radius * 0.98;
        var grade = Study.Rig(Of()).Value("launch-grade-pull");

        var angle = Math.Atan(grade);
        (4900 * Gravity * (Math.Sin(angle) + (0.012 * Math.Cos(angle)))).Should().BeApproximately(force, 1e-6 * force);
    }

    [Fact]
    public void An_engine_starts_in_its_lowest_gear_with_its_lowest_point()
    {
        var force = 250 * 4.2 * 3.6 * 0.9 / Radius;
        var grade = Study.Rig(Of(block: Diesel)).Value("launch-grade-pull");

        var angle = Math.Atan(grade);
        (4900 * Gravity * (Math.Sin(angle) + (0.012 * Math.Cos(angle)))).Should().BeApproximately(force, 1e-6 * force);
    }

    [Theory]
    [InlineData("front", 10, "grip")]
    [InlineData("all", 4, "pull")]
    public void The_lower_of_the_two_counts_and_is_named(string drive, double reduction, string limit)
    {
        var rig = Study.Rig(Of(drive).Replace("reduction 10", FormattableString.Invariant($"reduction {reduction}")));
        var node = rig.Result("launch-grade");

        node.Value.Should().Be(Math.Min(rig.Value("launch-grade-grip"), rig.Value("launch-grade-pull")));
        PowerResults.LaunchGrade.Write(rig, node.Value, Quantities.DisplaySystem.Metric).Should().EndWith(limit);
    }

    [Fact]
    public void Spring_bars_help_a_front_drive()
    {
        var bars = Of().Replace("rig r\n", "hitch h\n    type weight-distributing\n    mass 0 kg\n\nrig r\n    hitch h\n    restoration 100 %\n");

        Study.Rig(bars).Value("launch-grade-grip").Should().BeGreaterThan(Study.Rig(Of()).Value("launch-grade-grip"));
    }

    [Fact]
    public void What_a_start_needs_to_know_is_named()
    {
        Study.Rig(Of().Replace("    cg-height 0.70 m\n", "")).Result("launch-grade").Missing!.Words.Should().Be("`cg-height` of vehicle v");
        Study.Rig(Of().Replace("                motor-torque 400 N·m\n", "").Replace("        motor-torque 400 N·m\n", "")).Result("launch-grade-pull").Missing!.Words.Should().Contain("motor-torque");
        Study.Rig(Of().Replace("drive front", "")).Result("launch-grade-grip").Missing!.Words.Should().Be("`drive` of vehicle v");
    }

    [FsCheck.Xunit.Property(MaxTest = 25)]
    public void More_friction_and_more_torque_start_on_steeper_hills(byte friction, byte torque)
    {
        string With(double f, double t) => FormattableString.Invariant($"{Of("rear").Replace("friction 0.8", FormattableString.Invariant($"friction {f}")).Replace("motor-torque 400", FormattableString.Invariant($"motor-torque {t}"))}");
        var (low, pull) = (0.2 + (friction / 400.0), 80 + torque);

        Study.Rig(With(low + 0.1, pull)).Value("launch-grade-grip").Should().BeGreaterThan(Study.Rig(With(low, pull)).Value("launch-grade-grip"));
        Study.Rig(With(low, pull + 20)).Value("launch-grade-pull").Should().BeGreaterThan(Study.Rig(With(low, pull)).Value("launch-grade-pull"));
    }

    /// <summary>Need and axle loads in N, by moments about the rear axle's and the front axle's contact.</summary>
    private static (double Need, double Front, double Rear) OnGrade(double angle)
    {
        var (sin, cos) = (Math.Sin(angle), Math.Cos(angle));
        double vehicle = 2400 * Gravity, ball = 300 * Gravity * cos;
        var pull = (2500 * Gravity * sin) + (0.012 * 2200 * Gravity * cos);
        var rear = ((vehicle * cos * 1.44) + (vehicle * sin * 0.70) + (pull * 0.45) + (ball * 4.2)) / 3;
        var front = (vehicle * cos) + ball - rear;
        return ((vehicle * sin) + pull + (0.012 * (front + rear)), front, rear);
    }
}

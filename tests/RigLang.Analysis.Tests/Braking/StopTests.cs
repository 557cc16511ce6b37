namespace RigLang.Analysis.Tests.Braking;

/// <summary>Stopping and parking of a whole rig, against figures worked out by hand: 2400 kg and a trailer of 2500 kg with 300 kg on the tongue.</summary>
public class StopTests
{
    private const double Gravity = 9.80665;

    private static string Slack(string lines = "") => Rigs.Plain($"restoration 0 %\nspeed 90 km/h{(lines == "" ? "" : "\n" + lines)}");

    [Fact]
    public void Tyres_and_the_trailer_s_brakes_slow_the_whole()
    {
        var rig = Study.Rig(Slack());
        var rate = Gravity * ((0.85 * 2700) + (0.5 * 2200)) / 4900;

        rig.Value("braking-rate").Should().BeApproximately(rate, 1e-9);
        rig.Value("stop-distance").Should().BeApproximately((25 * 2.5) + (25 * 25 / (2 * rate)), 1e-9);
        rig.Value("braking-push").Should().BeApproximately((2500 * rate) - (0.5 * 2200 * Gravity), 1e-6);
        rig.Result("stop-distance").IsEstimated.Should().BeTrue("friction, reaction and the brakes' ratio stand in");
    }

    [Fact]
    public void Without_the_trailer_s_brakes_it_goes_further_and_says_so()
    {
        var rate = Gravity * 0.85 * 2700 / 4900;

        Study.Rig(Slack()).Value("stop-distance-unbraked").Should().BeApproximately((25 * 2.5) + (25 * 25 / (2 * rate)), 1e-9);
        var unbraked = Study.Rig(Slack().Replace("brakes electric", "brakes none", StringComparison.Ordinal));
        unbraked.Value("stop-distance").Should().BeApproximately((25 * 2.5) + (25 * 25 / (2 * rate)), 1e-9);
        unbraked.Result("stop-distance-unbraked").Applies.Should().BeFalse();
        unbraked.Value("braking-push").Should().BeApproximately(2500 * rate, 1e-6);
    }

    [Fact]
    public void A_practice_says_how_slippery_it_is_and_how_quick_the_driver()
    {
        var wet = Study.Rig($"practice ours\n    assume friction 0.65\n    assume reaction-time 1 s\n\n{Slack("practice ours")}");
        var rate = Gravity * ((0.65 * 2700) + (0.5 * 2200)) / 4900;

        wet.Value("stop-distance").Should().BeApproximately(25 + (25 * 25 / (2 * rate)), 1e-9);
    }

    [Fact]
    public void On_ice_the_trailer_s_brakes_grip_no_better_than_the_vehicle_s() =>
        Study.Rig($"practice ours\n    assume friction 0.2\n\n{Slack("practice ours")}").Value("braking-rate").Should().BeApproximately(0.2 * Gravity, 1e-9);

    [Fact]
    public void An_overrun_brake_waits_for_the_push()
    {
        string Overrun(double friction) => FormattableString.Invariant($"practice ours\n    assume friction {friction}\n\n{Slack("practice ours").Replace("brakes electric", "brakes overrun", StringComparison.Ordinal)}");

        Study.Rig(Overrun(0.85)).Value("braking-rate").Should().BeApproximately(Study.Rig(Slack()).Value("braking-rate"), 1e-9, "braked hard it gives all it has");
        var gentle = Study.Rig(Overrun(0.3));
        gentle.Value("braking-rate").Should().BeLessThan(0.3 * Gravity);
        // What is pushed beyond 3 % of the weight, seven times over, is what brakes.
        var brake = (2500 * gentle.Value("braking-rate")) - gentle.Value("braking-push");
        brake.Should().BeApproximately(7 * (gentle.Value("braking-push") - (0.03 * 2500 * Gravity)), 1);
    }

    [Fact]
    public void Solo_there_is_no_push_and_no_trailer_to_ask_for()
    {
        var solo = Study.Rig(Slack().Replace("    trailer t\n", "", StringComparison.Ordinal));

        solo.Value("braking-rate").Should().BeApproximately(0.85 * Gravity, 1e-9);
        solo.Result("braking-push").Applies.Should().BeFalse();
        solo.Result("stop-distance-unbraked").Applies.Should().BeFalse();
    }

    [Fact]
    public void Nobody_knows_how_it_stops_without_a_word_on_the_brakes() =>
        Study.Rig(Slack().Replace("    brakes electric\n", "", StringComparison.Ordinal)).Result("stop-distance").Missing!.Words.Should().Contain("brake");

    [Fact]
    public void The_parking_brake_holds_what_it_is_built_for_and_no_more_than_grips()
    {
        // 3000 kg on 20 % is the force; on 4900 kg it is the sine of a flatter slope.
        var sine = 3000 * (0.2 / Math.Sqrt(1.04)) / 4900;
        var grade = sine / Math.Sqrt(1 - (sine * sine));
        Study.Rig(Slack()).Value("parking-grade").Should().BeApproximately(grade, 1e-9);

        // The trailer parks itself too: 2700 kg on 18 % more.
        var both = ((3000 * (0.2 / Math.Sqrt(1.04))) + (2700 * (0.18 / Math.Sqrt(1 + (0.18 * 0.18))))) / 4900;
        Study.Rig(Slack().Replace("brakes electric", "brakes electric\n    parking-brake yes", StringComparison.Ordinal))
            .Value("parking-grade").Should().BeApproximately(both / Math.Sqrt(1 - (both * both)), 1e-9);

        // On ice the rear wheels' grip counts: 1570 kg of 4900.
        Study.Rig($"practice ours\n    assume friction 0.1\n\n{Slack("practice ours")}").Value("parking-grade").Should().BeApproximately(0.1 * 1570 / 4900, 1e-9);
    }

    [Fact]
    public void A_heavy_unbraked_trailer_is_warned_of_even_where_the_practice_assumes_ice()
    {
        string Unbraked(string practice) => $"practice ours\n    assume friction {practice}\n\n{Slack("practice ours").Replace("brakes electric", "brakes none", StringComparison.Ordinal)}";

        Study.Slugs(Unbraked("0.85")).Should().Contain("long-stop");
        Study.Slugs(Slack()).Should().NotContain("long-stop");
        Study.Slugs($"practice ours\n    assume friction 0.2\n\n{Slack("practice ours")}").Should().NotContain("long-stop", "it is the rig that is judged, not the weather");
    }
}

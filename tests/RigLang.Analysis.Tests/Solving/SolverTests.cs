using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Solving;

/// <summary>Answers against what comes out of files that have the value written: by formula, by halving and by a scan over whole files, none of it by the solver.</summary>
public sealed class SolverTests
{
    [Fact]
    public void A_value_is_found_as_the_formula_has_it()
    {
        // 300 kg at 1.2 m behind the rear axle take 300 × 1.2 / 3.0 = 120 kg off the front, a share of which the bars bring back: 1250 − 120 (1 − q).
        var rig = Rig(Rigs.Plain("restoration ? for front-axle-load = 1190 kg"));

        rig.Answers.Should().ContainSingle().Which.Should().Match<Answer>(answer => answer.IsFound && answer.Others.IsEmpty);
        rig.Answers[0].Value.Should().BeApproximately(0.5, 1e-9);
        rig.Value("front-axle-load").Should().BeApproximately(1190, 1e-6);
    }

    [Fact]
    public void A_value_that_reaches_a_result_through_others_is_found()
    {
        // 0.12 of a trailer of 2500 kg + m on the ball; the item lies m kg at 2 m ahead of the axle, 5 m from the ball: tongue 300 + 2 m / 5.
        var text = Rigs.Plain("restoration 50 %\nload l") + "\n\nload l\n    on trailer\n        item stones ? for tongue-ratio = 12.5 % at 2.0 m ahead of axle\n";
        var rig = Rig(text);

        // (300 + 0.4 m) / (2500 + m) = 0.125  →  m = 12.5 / 0.275
        rig.Answers[0].Value.Should().BeApproximately(12.5 / 0.275, 1e-6);
        rig.Value("tongue-ratio").Should().BeApproximately(0.125, 1e-9);
    }

    [Fact]
    public void The_speed_for_a_charge_on_arrival_is_the_one_that_files_with_written_speeds_show()
    {
        var answer = Trip(Journey("? for energy-left = 52 % within 60 km/h .. 120 km/h")).Answers.Single();

        var (low, high) = (60.0, 120.0);
        for (var i = 0; i < 40; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = Left(middle) > 0.52 ? (middle, high) : (low, middle);
        }

        (answer.Value * 3.6).Should().BeApproximately(low, 1e-4);
        double Left(double speed) => Trip(Journey(FormattableString.Invariant($"{speed:0.0000000000} km/h"))).Legs[0].Value("energy-left");
    }

    [Fact]
    public void All_values_are_named_and_the_one_nearest_to_the_usual_is_taken()
    {
        // Slow, heating and lights take long; fast, the air takes much: between lies a least, and on both sides of it a speed for any energy above it.
        var used = Enumerable.Range(6, 150).Select(speed => (Speed: speed, Used: Used(speed))).ToList();
        var least = used.MinBy(point => point.Used);
        var wished = Math.Round((least.Used * 1.15) / 3.6e6, 2);
        var slow = Crossing(used.Where(point => point.Speed <= least.Speed).ToList(), wished * 3.6e6);
        var fast = Crossing(used.Where(point => point.Speed >= least.Speed).ToList(), wished * 3.6e6);

        var answer = Trip(Journey(FormattableString.Invariant($"? for energy-used = {wished} kWh within 6 km/h .. 155 km/h"))).Answers.Single();

        // The rig's speed is 90 km/h.
        var (near, far) = Math.Abs(slow - 90) < Math.Abs(fast - 90) ? (slow, fast) : (fast, slow);
        (answer.Value * 3.6).Should().BeApproximately(near, 0.1);
        answer.Others.Should().ContainSingle().Which.Should().BeApproximately(far / 3.6, 0.03);

        static double Crossing(List<(int Speed, double Used)> points, double wished)
        {
            var (a, b) = points.Zip(points.Skip(1)).First(pair => (pair.First.Used - wished) * (pair.Second.Used - wished) <= 0);
            return a.Speed + ((wished - a.Used) / (b.Used - a.Used));
        }
    }

    [Fact]
    public void The_least_is_where_a_scan_over_files_has_it()
    {
        var scanned = Enumerable.Range(100, 700).Select(tenth => tenth / 10.0).MinBy(speed => Used(speed));

        var answer = Trip(Journey("? least energy-used within 10 km/h .. 80 km/h")).Answers.Single();

        answer.Should().Match<Answer>(found => found.IsFound && found.Binds == Binding.Turn);
        (answer.Value * 3.6).Should().BeApproximately(scanned, 0.11);
    }

    [Fact]
    public void A_most_at_the_end_of_the_range_says_so()
    {
        var answer = Trip(Journey("? most energy-left within 60 km/h .. 100 km/h")).Answers.Single();

        (answer.Value * 3.6).Should().BeApproximately(60, 1e-9);
        answer.Binds.Should().Be(Binding.LowEnd);
    }

    [Fact]
    public void What_is_out_of_reach_gives_the_nearest_and_what_binds()
    {
        var trip = Trip(Journey("? for energy-left = 90 % within 60 km/h .. 100 km/h"));

        var answer = trip.Answers.Single();
        answer.Sort.Should().Be(AnswerSort.OutOfReach);
        answer.Binds.Should().Be(Binding.LowEnd);
        (answer.Value * 3.6).Should().BeApproximately(60, 1e-9);
        answer.Reached.Should().BeApproximately(Trip(Journey("60 km/h")).Legs[0].Value("energy-left"), 1e-12);
        trip.Legs[0].Result("energy-left").IsEstimated.Should().BeTrue("the rig's speed stands in, since nothing was found");
    }

    [Fact]
    public void A_limit_that_binds_is_told_from_the_end_of_the_range()
    {
        var trip = Trip(Journey("? for energy-left = 20 % within 60 km/h .. 130 km/h\n        speed-limit 80 km/h"));

        var answer = trip.Answers.Single();
        answer.Should().Match<Answer>(found => found.Sort == AnswerSort.OutOfReach && found.Binds == Binding.Flat);
        (answer.Value * 3.6).Should().BeApproximately(80, 0.01, "above the limit nothing changes");
    }

    [Fact]
    public void At_a_stop_the_leg_that_begins_there_counts()
    {
        var trip = Trip(Journey("90 km/h", "    stop coast\n        charger 100 kW dc\n        charge-to ? for energy-left = 40 %\n    leg pass\n        distance 100 km\n        climb 0 m\n"));

        trip.Answers.Single().Subject!.Title.Should().Be("leg pass");
        trip.Legs[1].Value("energy-left").Should().BeApproximately(0.4, 1e-9);
        // What the leg takes doesn't rest on the charge, so the charge to leave with is the sum.
        var taken = trip.Legs[1].Value("energy-used") / (80 * 3.6e6);
        trip.Answers[0].Value.Should().BeApproximately(0.4 + taken, 1e-9);
    }

    [Fact]
    public void A_question_is_answered_after_those_that_it_rests_on_wherever_it_stands()
    {
        var later = "    leg pass\n        distance 60 km\n        climb 0 m\n        speed ? for energy-left = 42 %\n";
        var trip = Trip(Journey("? for energy-left = 55 %", later));

        trip.Answers.Should().OnlyContain(answer => answer.IsFound);
        trip.Legs[0].Value("energy-left").Should().BeApproximately(0.55, 1e-9);
        trip.Legs[1].Value("energy-left").Should().BeApproximately(0.42, 1e-9);
    }

    [Fact]
    public void Two_that_rest_on_each_other_are_solved_together()
    {
        // The charge on leaving is wished for by what is left at the end; the speed of the first leg by how far that would go: each moves the other.
        var text = Journey("? for range-left = 250 km", "    leg pass\n        distance 60 km\n        climb 0 m\n        speed 80 km/h\n").Replace("start-charge 95 %", "start-charge ? for energy-left = 40 %");

        var trip = Trip(text);

        trip.Answers.Should().OnlyContain(answer => answer.IsFound && answer.With.Length == 1);
        trip.Legs[0].Value("range-left").Should().BeApproximately(250_000, 1e-2);
        trip.Legs[1].Value("energy-left").Should().BeApproximately(0.4, 1e-8);
        // Both written into the file, with all their digits, say the same.
        var (charge, speed) = (trip.Answers[0].Value * 100, trip.Answers[1].Value * 3.6);
        var written = Trip(text.Replace("? for energy-left = 40 %", FormattableString.Invariant($"{charge:0.000000000} %")).Replace("? for range-left = 250 km", FormattableString.Invariant($"{speed:0.000000000} km/h")));
        written.Legs[0].Value("range-left").Should().BeApproximately(250_000, 1);
        written.Legs[1].Value("energy-left").Should().BeApproximately(0.4, 1e-7);
    }

    [Fact]
    public void Two_wishes_that_cannot_be_met_at_once_are_refused()
    {
        // The second leg takes what it takes, whatever the first does: 60 % before it and 30 % behind it can't both be.
        var text = Journey("? for energy-left = 60 %", "    leg pass\n        distance 60 km\n        climb 0 m\n        speed 80 km/h\n").Replace("start-charge 95 %", "start-charge ? for energy-left = 30 %");

        Trip(text).Answers.Should().OnlyContain(answer => answer.Sort == AnswerSort.Refused && answer.With.Length == 1);
    }

    [Fact]
    public void A_least_among_those_that_rest_on_each_other_is_refused()
    {
        var trip = Trip(Journey("? most energy-left within 60 km/h .. 100 km/h").Replace("start-charge 95 %", "start-charge ? for energy-left = 40 %"));

        trip.Answers.Should().OnlyContain(answer => answer.Sort == AnswerSort.Refused && answer.Why.Length > 0 && answer.With.Length == 1);
    }

    [Fact]
    public void A_wish_at_another_speed_is_met_there()
    {
        var lines = "restoration 50 %\nspeed 60 km/h";
        var text = Rigs.Plain(lines).Replace("    brakes electric\n", "    brakes electric\n    body-length 6.0 m\n    width 2.3 m\n    yaw-inertia ? for damping at 100 km/h = 0.05\n");
        var rig = Rig(text);

        rig.Answers.Single().IsFound.Should().BeTrue();
        rig.AtSpeed(100 / 3.6).Value("damping").Should().BeApproximately(0.05, 1e-9);
        var written = Rig(text.Replace("? for damping at 100 km/h = 0.05", FormattableString.Invariant($"{rig.Answers[0].Value:0.000000} kg·m²")));
        written.AtSpeed(100 / 3.6).Value("damping").Should().BeApproximately(0.05, 1e-6);
    }

    [Fact]
    public void A_found_value_is_a_reason_marked_as_solved()
    {
        var trip = Trip(Journey("? for energy-left = 52 %"));
        var read = Ground.Of(trip.Legs[0].Result("leg-time")).Single(read => read.Fact.Keyword == "speed" && read.Block == trip.Legs[0].Leg);

        read.Origin.Should().Be(ReadOrigin.Solved);
        read.Value.Should().Be(trip.Answers[0].Value);
        trip.Legs[0].Result("leg-time").IsEstimated.Should().BeFalse("a found value is no estimate");
        trip.Legs[0].Value("leg-time").Should().BeApproximately(190_000 / read.Value, 1e-6);
    }

    [Theory]
    [InlineData("? for energy-left = 51 %")]
    [InlineData("? for energy-left = 52.5 %")]
    [InlineData("? for energy-used = 33 kWh within 60 km/h .. 120 km/h")]
    [InlineData("? for leg-time = 2 h 7 min")]
    public void The_written_answer_still_meets_the_wish(string question)
    {
        var trip = Trip(Journey(question));
        var written = Rounding.Of(trip, trip.Answers.Single());

        written.Text.Length.Should().BeLessThan(12);
        var target = trip.Answers[0].Unknown.Target!;
        Trip(Journey(written.Text)).Legs[0].Value(trip.Answers[0].Unknown.Result.Name).Should().BeApproximately(target.Value, target.Unit.HalfWidthToSi(0.5 * Math.Pow(10, -target.Decimals), target.Value));
    }

    [Fact]
    public void A_whole_number_is_one_that_rounds_to_the_wish()
    {
        var rig = Rig(Rigs.Plain("bar-force 2.0 kN").Replace("    bar-length 0.75 m", "    bar-length 0.75 m\n    bars ? for bar-couple = 3.0 kN·m"));

        // 2 kN on an arm of 0.75 m is 1.5 kN·m for each bar.
        rig.Answers.Single().Should().Match<Answer>(answer => answer.IsFound);
        rig.Answers[0].Value.Should().Be(2);
    }

    [Fact]
    public void What_asks_nothing_is_not_solved_and_stays_the_same_object()
    {
        var analysis = Study.Of(Journey("90 km/h"));
        var declaration = analysis.Workspace.Find(Study.File, DeclarationKind.Trip, "out")!;

        analysis.Solved.Trip(declaration).Should().BeSameAs(analysis.Trip(declaration));
    }

    [Fact]
    public void A_search_that_is_called_off_leaves_nothing_behind()
    {
        var analysis = Study.Of(Journey("? for energy-left = 60 %"));
        var off = new CancellationToken(canceled: true);

        analysis.Invoking(state => state.Answer(Study.File, off)).Should().Throw<OperationCanceledException>();
        analysis.HasOpenQuestions(Study.File).Should().BeTrue();
        analysis.Answer(Study.File, CancellationToken.None);
        analysis.HasOpenQuestions(Study.File).Should().BeFalse();
    }

    private static double Used(double speed) => Trip(Journey(FormattableString.Invariant($"{speed:0.0} km/h"))).Legs[0].Value("energy-used");

    private static string Journey(string speed, string more = "") => $$"""
        vehicle van
            mass 2400 kg
            rolling 0.010
            drag-area 0.8 m²
            aboard nothing
            electric
                usable-energy 80 kWh
                motor-power 150 kW
                auxiliary 2 kW
                charge-point 10 % 120 kW
                charge-point 100 % 10 kW

        rig solo
            vehicle van
            speed 90 km/h

        trip out
            rig solo
            start home
            start-charge 95 %
            leg coast
                distance 190 km
                climb 0 m
                speed {{speed}}

        """ + more;

    private static RigStudy Rig(string text)
    {
        var analysis = Study.Of(text).Solved;
        return analysis.Rig(analysis.Workspace.Find(Study.File, DeclarationKind.Rig, "r")!);
    }

    private static TripStudy Trip(string text)
    {
        var analysis = Study.Of(text).Solved;
        return analysis.Trip(analysis.Workspace.Find(Study.File, DeclarationKind.Trip, "out")!)!;
    }
}

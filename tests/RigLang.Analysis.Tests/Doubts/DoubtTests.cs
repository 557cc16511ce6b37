using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tests.Trips;
using RigLang.Analysis.Tracking;

namespace RigLang.Analysis.Tests.Doubts;

/// <summary>Against the rules of error propagation worked out by hand, and against files with the changed values written into them.</summary>
public sealed class DoubtTests
{
    private static Doubt Of(ISubject subject, string result) => DoubtTable.Of(Catalogue.FindResult(result)!, subject)!;

    [Fact]
    public void Nothing_written_in_doubt_is_in_no_doubt() => Of(Study.Rig(Rigs.Plain("restoration 0 %")), "rear-axle-load").Should().Match<Doubt>(sure => sure.HalfWidth == 0 && sure.Parts.IsEmpty);

    [Fact]
    public void Loads_add_as_squares_with_the_lever_of_each()
    {
        // Rear load = carried + tongue × (wheelbase + overhang) ÷ wheelbase: 1150 ± 20 kg and 300 ± 10 kg × 1.4.
        var rig = Study.Rig(Rigs.Plain("restoration 0 %").Replace("carries 1150 kg", "carries 1150 kg ± 20 kg", StringComparison.Ordinal).Replace("tongue 300 kg", "tongue 300 kg ± 10 kg", StringComparison.Ordinal));

        var rear = Of(rig, "rear-axle-load");

        rear.HalfWidth.Should().BeApproximately(Math.Sqrt((20 * 20) + (14 * 14)), 1e-6);
        rear.Parts.Select(part => (part.Fact.Fact.Title, Math.Round(part.Effect, 6))).Should().Equal(("carries", 20), ("tongue", 14));
        Of(rig, "front-axle-load").Parts.Single().Effect.Should().BeApproximately(-4, 1e-6);
    }

    [Fact]
    public void A_cause_of_all_legs_adds_up_and_does_not_average_out()
    {
        const string Lines = "start-charge 100 %\nreserve 5 %\nair 15 °C\nleg a\n    distance 60 km\n    climb 0 m\nleg b\n    distance 60 km\n    climb 0 m";
        var doubtful = Journey.Electric.Replace("drag-area 2.6 m²", "drag-area 2.6 m² ± 0.26 m²", StringComparison.Ordinal);
        double Left(string drag) => Journey.Of(Journey.Electric.Replace("drag-area 2.6 m²", $"drag-area {drag} m²", StringComparison.Ordinal), Lines).Legs[1].Value("energy-left");

        var trip = Journey.Of(doubtful, Lines);
        var (first, second) = (Of(trip.Legs[0], "energy-left"), Of(trip.Legs[1], "energy-left"));

        second.HalfWidth.Should().BeApproximately((Left("2.34") - Left("2.86")) / 2, 1e-3 * second.HalfWidth);
        second.HalfWidth.Should().BeApproximately(2 * first.HalfWidth, 0.02 * second.HalfWidth);
    }

    [Fact]
    public void An_estimate_brings_its_own_spread_and_what_it_was_made_from()
    {
        // Track width estimated as 0.85 × width, good to 8 %.
        var rig = Study.Rig(Rigs.Plain("restoration 0 %").Replace("wheelbase 3.00 m", "wheelbase 3.00 m\n    width 2.00 m ± 0.02 m\n    cg-height 0.70 m", StringComparison.Ordinal));

        var tips = Of(rig, "vehicle-stability-factor");

        tips.Parts.Select(part => part.Fact.Fact.Title).Should().Contain(["track-width", "width"]);
        tips.Parts.Where(part => part.Fact.Fact.Title == "track-width").Sum(part => part.Effect).Should().BeApproximately(0.08 * tips.Value, 0.01 * tips.Value);
    }

    [Fact]
    public void The_class_of_the_tyres_is_a_doubt_of_the_damping()
    {
        // What the result damping-spread makes of the same doubts with the model alone, first order to one side.
        var rig = Study.Rig(Rigs.Plain("restoration 0 %\nspeed 90 km/h").Replace("mass 2500 kg", "mass 2500 kg\n    body-length 6.00 m\n    width 2.20 m", StringComparison.Ordinal)
            .Replace("overhang 1.20 m", "overhang 1.20 m\n    yaw-inertia 3200 kg·m² ± 300 kg·m²", StringComparison.Ordinal));

        var doubt = Of(rig, "damping");

        doubt.Parts.Select(part => part.Fact.Fact.Title).Should().Contain(["trailer-tyre-stiffness", "tyre-stiffness", "yaw-inertia"]);
        doubt.HalfWidth.Should().BeApproximately(rig.Value("damping-spread"), 0.25 * doubt.HalfWidth);
    }

    [Fact]
    public void Chances_are_those_of_the_normal_distribution()
    {
        // 1600 ± 40 kg: a deviation of 20 kg. Table of the standard normal distribution: Φ(1) = 0.8413, Φ(2) = 0.9772.
        var doubt = new Doubt(1600, 40, [], []);

        doubt.ChanceAbove(1620).Should().BeApproximately(0.1587, 5e-5);
        doubt.ChanceBelow(1640).Should().BeApproximately(0.9772, 5e-5);
    }

    [Theory]
    [InlineData("rear-axle-load")]
    [InlineData("tongue-ratio")]
    [InlineData("train-load")]
    public void Draws_agree_with_the_first_order_where_nothing_is_bent(string result)
    {
        var rig = Study.Rig(Rigs.Plain("restoration 0 %").Replace("carries 1150 kg", "carries 1150 kg ± 20 kg", StringComparison.Ordinal)
            .Replace("tongue 300 kg", "tongue 300 kg ± 10 kg", StringComparison.Ordinal).Replace("mass 2500 kg", "mass 2500 kg ± 50 kg", StringComparison.Ordinal));

        var doubt = Of(rig, result);
        var draws = Draws.Of(Catalogue.FindResult(result)!, rig)!;

        doubt.IsCurved.Should().BeFalse();
        // 1000 draws give the ends of 95 % to some 5 %.
        (draws.HalfWidth * 2 / 1.96).Should().BeApproximately(doubt.HalfWidth, 0.08 * doubt.HalfWidth);
        draws.Failed.Should().Be(0);
    }

    [Fact]
    public void The_draws_are_the_same_every_time()
    {
        Draws Drawn() => Draws.Of(Catalogue.FindResult("tongue-ratio")!, Study.Rig(Rigs.Plain("restoration 0 %").Replace("tongue 300 kg", "tongue 300 kg ± 90 kg", StringComparison.Ordinal)), 200)!;

        Drawn().Should().Be(Drawn());
    }

    [Fact]
    public void A_result_that_is_bent_within_its_doubt_says_so()
    {
        // The lever of the tongue goes with 1 ÷ wheelbase.
        var rig = Study.Rig(Rigs.Plain("restoration 0 %").Replace("wheelbase 3.00 m", "wheelbase 3.00 m ± 3.8 m", StringComparison.Ordinal));

        Of(rig, "rear-axle-load").IsCurved.Should().BeTrue();
    }

    [Fact]
    public void Only_what_rests_on_an_uncertain_fact_is_computed_again()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 0 %").Replace("tongue 300 kg", "tongue 300 kg ± 10 kg", StringComparison.Ordinal));
        var all = Catalogue.Of(ResultScope.Rig).ToList();
        all.ForEach(result => result.Compute(rig));
        var carriedOut = rig.CarriedOut;

        all.ForEach(result => DoubtTable.Of(result, rig));

        rig.CarriedOut.Should().Be(carriedOut);
    }
}

namespace RigLang.Comparing.Tests;

/// <summary>Loads by hand: 100 kg at x behind the front axle of a 3.00 m wheelbase put x ÷ 3.00 of it on the rear axle.</summary>
public sealed class ComparisonTests
{
    private const double Gram = 1e-3;

    [Fact]
    public void The_same_text_is_the_same() => States.Edited().Should().Match<Comparison>(same => same.Verdict == Verdict.Same && same.Changes.IsEmpty && same.Results.IsEmpty && same.Unmoved > 20);

    [Fact]
    public void Blanks_and_comments_change_no_value()
    {
        var comparison = States.Edited(("wheelbase 3.00 m", "wheelbase    3.00 m   # measured"));

        comparison.Verdict.Should().Be(Verdict.OnlyWriting);
        comparison.Changes.Should().BeEmpty();
    }

    [Theory]
    [InlineData("gross-rating 2700 kg", "gross-rating 2700.0 kg")]
    [InlineData("overhang 1.20 m", "overhang 120 cm")]
    [InlineData("tongue 300 kg", "tongue 661.4 lb")]
    [InlineData("at 3.50 m behind front-axle", "at 350 cm behind front-axle")]
    public void A_value_in_other_words_is_told_as_such(string old, string now)
    {
        var comparison = States.Edited((old, now));

        comparison.Changes.Should().ContainSingle().Which.Kind.Should().Be(ChangeKind.Rewritten);
        comparison.Changes[0].After.Should().Contain(now);
    }

    [Fact]
    public void A_moved_item_moves_the_axle_loads_and_is_named_as_the_cause()
    {
        var comparison = States.Edited(("3.50 m behind front-axle", "2.00 m behind front-axle"));

        comparison.Verdict.Should().Be(Verdict.ResultsMoved);
        var rear = comparison.Result("rear-axle-load");
        rear.Difference.Should().BeApproximately(100 * (2.00 - 3.50) / 3.00, Gram);
        rear.Because.Should().ContainSingle().Which.Should().Match<Share>(share => share.Change.What == "on vehicle, item box" && Math.Abs(share.Difference - rear.Difference) < Gram);
        rear.Together.Should().BeApproximately(0, Gram);
    }

    [Fact]
    public void Shares_are_what_each_change_does_alone_and_the_rest_is_told_apart()
    {
        // Rear load of the box: m·x ÷ 3.00. Mass 100 to 200 alone: +116.7; place 3.5 to 3.0 cannot be told from the same line, so two items are used.
        var comparison = States.Edited(("wheelbase 3.00 m", "wheelbase 2.80 m"), ("tongue 300 kg", "tongue 250 kg"));

        static double Rear(double wheelbase, double tongue) => 1150 + (100 * 3.50 / wheelbase) + (tongue * (wheelbase + 1.20) / wheelbase);
        var rear = comparison.Result("rear-axle-load");
        rear.Difference.Should().BeApproximately(Rear(2.8, 250) - Rear(3, 300), Gram);
        rear.Because.Single(share => share.Change.What == "wheelbase").Difference.Should().BeApproximately(Rear(2.8, 300) - Rear(3, 300), Gram);
        rear.Because.Single(share => share.Change.What == "tongue").Difference.Should().BeApproximately(Rear(3, 250) - Rear(3, 300), Gram);
        rear.Together.Should().BeApproximately(Rear(2.8, 250) - Rear(2.8, 300) - Rear(3, 250) + Rear(3, 300), Gram);
    }

    [Fact]
    public void An_added_line_and_a_removed_one_have_their_shares()
    {
        var comparison = States.Edited(("        item box 100 kg at 3.50 m behind front-axle", "        item dog 30 kg at 3.00 m behind front-axle"));

        comparison.Changes.Select(change => change.Kind).Should().BeEquivalentTo([ChangeKind.Added, ChangeKind.Removed]);
        var rear = comparison.Result("rear-axle-load");
        rear.Because.Select(share => Math.Round(share.Difference, 3)).Should().Equal(-116.667, 30);
    }

    [Fact]
    public void A_limit_that_is_passed_now_is_the_verdict()
    {
        var comparison = States.Edited(("item box 100 kg", "item box 500 kg"));

        comparison.Verdict.Should().Be(Verdict.LimitCrossed);
        comparison.Limits.Should().Contain(limit => limit.IsCrossed && limit.Title == "Vehicle, gross");
        comparison.Findings.New.Should().NotBeEmpty();
        States.Compare(States.Rig.Replace("item box 100 kg", "item box 500 kg", StringComparison.Ordinal), States.Rig).Should().Match<Comparison>(back =>
            back.Verdict == Verdict.ResultsMoved && back.Limits.Any(limit => limit.IsMended) && back.Findings.Cleared.Length == comparison.Findings.New.Length);
    }

    [Fact]
    public void A_value_no_result_reads_is_a_changed_input()
    {
        var comparison = States.Edited(("load day\n    on", "load day\n    note \"the box is red\"\n    on"));

        comparison.Verdict.Should().Be(Verdict.InputsChanged);
        comparison.Changes.Should().ContainSingle().Which.Kind.Should().Be(ChangeKind.Added);
    }

    [Fact]
    public void A_renamed_declaration_is_found_again_by_what_it_says()
    {
        var comparison = States.Edited(("vehicle v\n    wheelbase", "vehicle van\n    wheelbase"), ("rig r\n    vehicle v", "rig r\n    vehicle van"));

        comparison.Changes.Should().ContainSingle().Which.Should().Match<Change>(change => change.Kind == ChangeKind.Renamed && change.Before == "vehicle v" && change.After == "vehicle van");
        comparison.Results.Should().BeEmpty();
        comparison.Verdict.Should().Be(Verdict.OnlyWriting);
    }

    [Fact]
    public void A_renamed_item_is_no_loss_and_no_gain()
    {
        var comparison = States.Edited(("item box 100", "item crate 100"));

        comparison.Changes.Should().ContainSingle().Which.Kind.Should().Be(ChangeKind.Renamed);
        comparison.Results.Should().BeEmpty();
    }

    [Fact]
    public void A_declaration_that_moves_to_another_file_is_the_same()
    {
        var vehicle = States.Rig[..States.Rig.IndexOf("trailer t\n", StringComparison.Ordinal)];
        var comparison = Comparison.Of(
            States.Of(("a.rig", States.Rig)),
            States.Of(("a.rig", "use \"v.rig\"\n" + States.Rig[vehicle.Length..]), ("v.rig", vehicle)));

        comparison.Results.Should().BeEmpty();
        comparison.Changes.Should().ContainSingle().Which.What.Should().Be("use \"v.rig\"");
    }

    [Fact]
    public void A_used_file_is_compared_as_each_state_has_it()
    {
        var vehicle = States.Rig[..States.Rig.IndexOf("trailer t\n", StringComparison.Ordinal)];
        var rest = "use \"v.rig\"\n" + States.Rig[vehicle.Length..];
        var comparison = Comparison.Of(States.Of(("a.rig", rest), ("v.rig", vehicle)), States.Of(("a.rig", rest), ("v.rig", vehicle.Replace("carries 1250 kg", "carries 1200 kg", StringComparison.Ordinal))));

        comparison.Result("front-axle-load").Difference.Should().BeApproximately(-50, Gram);
        comparison.Result("front-axle-load").Because.Single().Change.Title.Should().Be("vehicle v, axle front, carries");
    }

    [Fact]
    public void What_a_like_line_takes_over_shares_the_cause_of_its_parent()
    {
        const string Child = "\nload more like day\n    on vehicle\n        item bag 10 kg at 1.50 m behind front-axle\n\nrig q like r\n    load more\n";
        var comparison = States.Compare(States.Rig + Child, States.Rig.Replace("item box 100 kg", "item box 130 kg", StringComparison.Ordinal) + Child);

        comparison.Changes.Should().ContainSingle();
        comparison.Results.Where(result => result.Result.Name == "rear-axle-load").Select(result => (result.Pair.After!.Name, Math.Round(result.Difference, 6)))
            .Should().BeEquivalentTo([("r", 35.0), ("q", 70.0)]);
    }

    [Fact]
    public void Lines_that_cannot_be_read_are_told_of_and_never_called_unchanged()
    {
        var comparison = States.Edited(("wheelbase 3.00 m", "wheelbase three metres"));

        comparison.Unread.Should().ContainSingle().Which.Should().Match<UnreadFile>(file => file.Before.IsEmpty && !file.After.IsEmpty);
        comparison.Verdict.Should().Be(Verdict.NewErrors);
        comparison.Result("rear-axle-load").After!.IsComputed.Should().BeFalse();
        comparison.Result("rear-axle-load").Because.Should().ContainSingle().Which.Difference.Should().Be(double.NaN);
    }

    [Fact]
    public void Two_states_without_a_common_declaration_have_only_comers_and_goers()
    {
        var comparison = States.Compare("vehicle a\n    wheelbase 3 m\n", "trailer b\n    mass 900 kg\n");

        comparison.Changes.Select(change => (change.Kind, change.Of)).Should().BeEquivalentTo([(ChangeKind.Added, "trailer b"), (ChangeKind.Removed, "vehicle a")]);
        comparison.Declarations.Should().OnlyContain(pair => !pair.IsBoth);
    }

    [Fact]
    public void An_empty_state_can_be_compared() => States.Compare("", States.Rig).Verdict.Should().NotBe(Verdict.Same);
}

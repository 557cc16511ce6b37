using System.Collections.Immutable;
using RigLang.Analysis.Checks;
using RigLang.Analysis.Curing;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Tests.Curing;

/// <summary>Every fix of which the number is solved for: applied as text and checked again.</summary>
public sealed class ComputedFixTests
{
    /// <summary>
    /// In the examples on these checks' pages nothing that is aboard can be changed by so much: ratings far below what the vehicle or trailer weighs empty (RL303,
    /// RL307, RL308, RL607, RL609), a tow ball fixed to the vehicle (RL605), nothing loaded high (RL613).
    /// </summary>
    private static readonly string[] WithoutCureInExample = ["RL303", "RL307", "RL308", "RL605", "RL607", "RL609", "RL613"];

    public static TheoryData<string> Codes => new(AnalysisChecks.All.Where(check => check.Cures.Length > 0).Select(check => check.Declaration.Code).Distinct());

    public static TheoryData<int> Scenarios => [.. Enumerable.Range(0, Example.All.Count)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_bad_example_is_cured_by_each_fix_that_it_is_offered(string code)
    {
        var check = AnalysisChecks.Find(code)!;
        var fixes = Judge(check.Bad, finding => finding.Check.Code == code, [.. check.Beside]);
        (fixes.Count > 0).Should().Be(!WithoutCureInExample.Contains(code));
    }

    [Theory]
    [MemberData(nameof(Scenarios))]
    public void Whatever_the_examples_are_offered_cures(int scenario) => Judge(Example.All[scenario], _ => true);

    [Fact]
    public void An_item_is_moved_as_far_as_the_levers_ask()
    {
        // By hand: the rear axle carries 1150 kg, of 150 kg people 1.40 m behind the front axle 70 kg, and of 105 kg at the ball 105 x (3.00 + 1.10) / 3.00 = 143.5 kg:
        // 1363.5 kg. To be no more than 1300 kg the tongue must lose 46.46 kg; 100 kg of stores moved rearward take 100 kg x d / 5.00 m, so d is at least 2.323 m.
        Title(Pair(("axle-rating 1700 kg", "axle-rating 1300 kg"), ("stores 100 kg at axle", "stores 100 kg at 0.00 m behind axle")), "axle-over-rating", "Move stores")
            .Should().StartWith("Move stores 2.33 m rearward: axle rear 1299.8 kg of 1300 kg").And.Contain("tongue 3.7 %");
    }

    /// <summary>Of the same 2.323 m one is there already, and a whole metre is too coarse a step.</summary>
    [Fact]
    public void The_places_that_are_written_coarsely_get_one_digit_more() =>
        Title(Pair(("axle-rating 1700 kg", "axle-rating 1300 kg"), ("stores 100 kg at axle", "stores 100 kg at 1 m behind axle")), "axle-over-rating", "Move stores").Should().StartWith("Move stores 1.4 m rearward");

    [Fact]
    public void An_item_is_lightened_to_the_author_s_digits()
    {
        // By hand: 1500 kg and 100 kg of stores against 1550 kg, in steps of a whole kilogram.
        Title(Pair(("gross-rating 2000 kg", "gross-rating 1550 kg")), "trailer-over-gross", "Take").Should().StartWith("Take 50 kg out of stores: trailer gross 1550 kg of 1550 kg");
        Title(Pair(("gross-rating 2000 kg", "gross-rating 1549.5 kg")), "trailer-over-gross", "Take").Should().StartWith("Take 51 kg out of stores");
    }

    [Fact]
    public void What_leaves_a_new_error_comes_last_and_says_so()
    {
        // The rear axle is cured by moving stores rearward, until the tongue is lighter than its maker asks for.
        var titles = Titles(Pair(("axle-rating 1700 kg", "axle-rating 1350 kg"), ("tongue-rating 230 kg", "tongue-rating 230 kg\n    tongue-least 100 kg"), ("stores 100 kg at axle", "stores 100 kg at 0.00 m behind axle")), "axle-over-rating");
        titles.Should().NotBeEmpty();
        titles.SkipWhile(title => !title.Contains("leaves", StringComparison.Ordinal)).Should().NotBeEmpty().And.OnlyContain(title => title.EndsWith("; leaves `tongue-below-least`", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_one_item_is_not_enough_several_are_left_behind() =>
        Titles(Pair(("gross-rating 2000 kg", "gross-rating 1550 kg"), ("item stores 100 kg at axle", "item awning 20 kg + 20 kg at axle\n        item chairs 2 x 20 kg at axle\n        item tools 10 kg + 10 kg at axle")), "trailer-over-gross")
            .Should().Equal("Leave awning and chairs behind (80 kg): trailer gross 1520 kg of 1550 kg, tongue 6.9 %");

    [Fact]
    public void A_warning_is_not_cured_by_an_error() =>
        Titles(Example.All.Single(text => text.Contains("rig too-much", StringComparison.Ordinal)), "pressure-too-low").Should().NotBeEmpty().And.NotContain(title => title.Contains("leaves", StringComparison.Ordinal));

    [Fact]
    public void People_keep_their_seats() =>
        Titles(Pair(("axle-rating 1700 kg", "axle-rating 1300 kg")), "axle-over-rating").Should().NotContain(title => title.Contains("people", StringComparison.Ordinal));

    [Fact]
    public void A_place_without_a_stop_gets_one_with_the_charge_that_is_enough()
    {
        var text = AnalysisChecks.Find("runs-empty")!.Bad.Replace("start-charge 30 %", "start-charge 70 %", StringComparison.Ordinal)
            .Replace("    leg coast\n        distance 190 km", "    leg inn \"The inn\"\n        distance 190 km\n        climb 0 m\n    leg coast\n        distance 190 km", StringComparison.Ordinal);
        var titles = Judge(text, finding => finding.Check.Slug == "runs-empty");
        titles.Should().Contain(title => title.StartsWith("Stop at The inn and charge to ", StringComparison.Ordinal));
    }

    private static string Pair(params (string Text, string Instead)[] changes) =>
        changes.Aggregate(AnalysisChecks.Find("axle-over-rating")!.Good, (text, change) => text.Replace(change.Text, change.Instead, StringComparison.Ordinal));

    private static List<string> Titles(string text, string slug) => Judge(text, finding => finding.Check.Slug == slug);

    private static string Title(string text, string slug, string start) => Titles(text, slug).Should().ContainSingle(title => title.StartsWith(start, StringComparison.Ordinal)).Subject;

    /// <summary>Applies every fix of the findings, and returns their titles.</summary>
    private static List<string> Judge(string text, Func<Finding, bool> wanted, params (string Path, string Text)[] beside)
    {
        var analysis = Study.Of(text, beside);
        var before = analysis.Findings(Study.File).Remaining;
        var titles = new List<string>();
        foreach (var finding in before.Where(wanted))
        {
            foreach (var computed in ComputedFixes.Of(analysis, finding))
            {
                var after = Study.Of(Applied.To(analysis, Study.File, text, computed.Fix), beside).Findings(Study.File).Remaining;
                Alike(after, finding).Should().BeLessThan(Alike(before, finding), $"`{computed.Fix.Title}` cures {finding.Check}");
                var errors = after.Where(other => other.Severity == Severity.Error).Select(other => (other.Check.Slug, other.About))
                    .Except(before.Where(other => other.Severity == Severity.Error).Select(other => (other.Check.Slug, other.About))).ToList();
                (errors.Count > 0).Should().Be(!computed.NewErrors.IsEmpty, $"`{computed.Fix.Title}` says what it leaves: {string.Join(", ", errors)}");
                computed.Fix.Title.Should().NotContain("NaN").And.NotContain("  ").And.NotContain("unknown");
                titles.Add(computed.Fix.Title);
            }
        }

        return titles;
    }

    private static int Alike(ImmutableArray<Finding> findings, Finding finding) => findings.Count(other => other.Check == finding.Check && other.About == finding.About
        && other.Place.Declaration.Lines[0].Text == finding.Place.Declaration.Lines[0].Text);
}

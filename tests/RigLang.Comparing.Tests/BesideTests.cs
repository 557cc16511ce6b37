using RigLang.Analysis;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;

namespace RigLang.Comparing.Tests;

/// <summary>Two rigs of one state. Loads by hand: m at x behind the front axle of a 3.00 m wheelbase puts m·x ÷ 3.00 on the rear axle.</summary>
public sealed class BesideTests
{
    private const double Gram = 1e-3;

    private const string Text = """
        vehicle v
            wheelbase 3.00 m
            overhang 1.20 m
            gross-rating 2500 kg
            axle front
                carries 1000 kg
            axle rear
                carries 1000 kg
                axle-rating 1400 kg
            aboard nothing

        trailer t
            mass 1500 kg
            tongue 150 kg
            coupling-to-axle 4.00 m
            aboard nothing

        load light
            on vehicle
                item box 60 kg at 3.00 m behind front-axle

        rig first
            vehicle v
            trailer t

        rig second like first
            load light
        """;

    [Fact]
    public void What_the_other_adds_is_named_and_is_the_cause()
    {
        var beside = Of(Text, "first", "second");

        beside.Changes.Should().ContainSingle().Which.Should().Match<Change>(change => change.Kind == ChangeKind.Added && change.What == "load light");
        var rear = beside.Results.Single(result => result.Part.Length == 0 && result.Result.Name == "rear-axle-load");
        rear.Before!.Value.Should().BeApproximately(1000 + (150 * 4.20 / 3.00), Gram);
        rear.Difference.Should().BeApproximately(60 * 3.00 / 3.00, Gram);
        rear.Because.Should().ContainSingle().Which.Difference.Should().BeApproximately(60, Gram);
        beside.Verdict.Should().Be(Verdict.ResultsMoved);
    }

    [Fact]
    public void A_limit_that_only_the_other_passes_is_the_verdict() =>
        Of(Text.Replace("box 60 kg", "box 250 kg", StringComparison.Ordinal), "first", "second").Verdict.Should().Be(Verdict.LimitCrossed);

    [Fact]
    public void The_other_way_round_it_is_taken_away()
    {
        var beside = Of(Text, "second", "first");

        beside.Changes.Should().ContainSingle().Which.Kind.Should().Be(ChangeKind.Removed);
        beside.Results.Single(result => result.Part.Length == 0 && result.Result.Name == "rear-axle-load").Because.Should().ContainSingle().Which.Difference.Should().BeApproximately(-60, Gram);
    }

    [Fact]
    public void Notes_and_expectations_make_no_difference() =>
        Of(Text.Replace("    load light", "    note \"as bought\"\n    expect tongue-load 150 kg ± 5 kg", StringComparison.Ordinal), "first", "second").Changes.Should().BeEmpty();

    private static Comparison Of(string text, string first, string second)
    {
        var file = new FileId("/rigs/a.rig");
        var analysis = new WorkspaceAnalysis(new Workspace(new MemoryFileSource([(file.Path, text)]), "/rigs")).Solved;
        return Comparison.Beside(analysis, analysis.Workspace.Find(file, DeclarationKind.Rig, first)!, analysis.Workspace.Find(file, DeclarationKind.Rig, second)!);
    }
}

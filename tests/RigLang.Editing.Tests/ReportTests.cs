using System.Collections.Immutable;
using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax.Checks;

namespace RigLang.Editing.Tests;

/// <summary>The line above rigs and trips, the report behind it, and what a person's settings change.</summary>
public class ReportTests
{
    private static readonly FileId Rigs = new($"{Examples.Folder}/people-carrier/6-rigs.rig");

    [Fact]
    public void Above_each_rig_stands_its_verdict_in_a_line()
    {
        var service = Examples.Open("people-carrier/6-rigs.rig").Current;
        var lenses = service.Lenses(Rigs, default);
        lenses.Select(lens => lens.Subject).Should().Contain("rig coast").And.OnlyContain(subject => subject.StartsWith("rig ", StringComparison.Ordinal));
        lenses.Should().OnlyContain(lens => lens.Range.Start.Line == lens.Range.End.Line && lens.Range.Start.Character == 4);
        service.LensWords(Rigs, "rig coast", default).Should().MatchRegex(@"^(Within|Over) .*\d").And.NotContainAny("*", "`", "\n");
        service.LensWords(Rigs, "rig nobody", default).Should().BeEmpty();
    }

    [Fact]
    public void Above_a_trip_stands_how_long_it_takes_and_what_is_left_or_what_is_missing()
    {
        var workspace = new TestWorkspace("trip t$0\n    leg a\n        distance 100 km\ntrip empty");
        workspace.Service.Lenses(TestWorkspace.Main, default).Select(lens => workspace.Service.LensWords(TestWorkspace.Main, lens.Subject, default)).Should().Equal("No rig yet", "No rig yet");

        var service = Examples.Open().Current;
        var trip = service.NamesLike("", default).First(name => name.Sort == OutlineSort.Trip && name.Place.File.Path.Contains("people-carrier", StringComparison.Ordinal));
        service.LensWords(trip.Place.File, $"trip {trip.Name}", default).Should().MatchRegex(@"in all.*(left|not computed: needs)");
    }

    [Fact]
    public void A_report_has_the_verdict_all_results_and_the_findings()
    {
        var service = Examples.Open("people-carrier/6-rigs.rig").Current;
        var report = service.Report(Rigs, "rig coast", default)!;
        report.Should().StartWith("# rig coast\n").And.Contain("### Room to each rating").And.Contain("### Rig coast: results").And.Contain("### Vehicle axle front: results").And.Contain("Tongue share");
        service.Report(Rigs, null, default).Should().StartWith("# 6-rigs.rig\n").And.Contain("## rig coast");
        service.Report(Rigs, "rig nobody", default).Should().BeNull();
        service.Report(new FileId("/nobody.rig"), null, default).Should().BeNull();
    }

    [Fact]
    public void A_report_lists_the_findings_of_its_declaration_alone()
    {
        var workspace = new TestWorkspace("rig one$0\n    vehicle nobody\nrig two\n    trailer nothing\n");
        workspace.Service.Report(TestWorkspace.Main, "rig one", default).Should().Contain("Line 2, error:").And.NotContain("Line 4");
    }

    [Fact]
    public void Findings_are_shown_as_serious_as_a_person_has_set_them()
    {
        var workspace = new TestWorkspace("vehicle v$0\n    wheelbase 29 m\n");
        Found(workspace, "magnitude-unlikely").Should().Be(Severity.Warning);

        workspace.Workspace.Severities = ImmutableDictionary<string, Severity?>.Empty.Add("magnitude-unlikely", Severity.Error);
        workspace.Workspace.TakeTouched().Should().Contain(TestWorkspace.Main);
        Found(workspace, "magnitude-unlikely").Should().Be(Severity.Error);

        workspace.Workspace.Severities = ImmutableDictionary<string, Severity?>.Empty.Add(workspace.Service.Findings(TestWorkspace.Main, default).First(one => one.Check.Slug == "magnitude-unlikely").Check.Code, null);
        Found(workspace, "magnitude-unlikely").Should().BeNull();
    }

    [Fact]
    public void A_practice_that_a_person_wishes_holds_for_rigs_that_name_none()
    {
        const string Rig = """
            vehicle van
                wheelbase 2.94 m
                overhang 1.09 m
                axle front
                    carries 1195 kg
                axle rear
                    carries 1225 kg
                aboard nothing
            trailer wren
                mass 1400 kg
                tongue 20 kg
                coupling-to-axle 4.2 m
                axle pair
                aboard nothing
            practice own
                limit tongue-ratio 5 % .. 6 %
            practice other
                limit tongue-ratio 0 % .. 90 %
            rig free$0
                vehicle van
                trailer wren
            rig bound like free
                practice other
            """;
        var workspace = new TestWorkspace(Rig);
        Limited(workspace).Should().BeEmpty();
        workspace.Workspace.Practice = "own";
        workspace.Workspace.TakeTouched().Should().Contain(TestWorkspace.Main);
        Limited(workspace).Should().NotBeEmpty().And.OnlyContain(line => line >= Line(Rig, "rig free") && line < Line(Rig, "rig bound"));
        workspace.Workspace.Practice = null;
        Limited(workspace).Should().BeEmpty();
    }

    private static int Line(string text, string start) => text.Split('\n').ToList().FindIndex(line => line.StartsWith(start, StringComparison.Ordinal));

    /// <summary>The lines with findings that a practice's limit on the tongue gives.</summary>
    private static List<int> Limited(TestWorkspace workspace) =>
        [.. workspace.Service.Findings(TestWorkspace.Main, default).Where(finding => finding.Message.Contains("5 %", StringComparison.Ordinal)).Select(finding => finding.Range.Start.Line)];

    private static Severity? Found(TestWorkspace workspace, string slug) =>
        workspace.Service.Findings(TestWorkspace.Main, default).Where(finding => finding.Check.Slug == slug).Select(finding => (Severity?)finding.Severity).FirstOrDefault();
}

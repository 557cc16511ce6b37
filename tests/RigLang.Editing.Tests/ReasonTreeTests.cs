using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Editing.Reasons;
using RigLang.Editing.Tests.Support;
using RigLang.Model.Declaring;
using RigLang.Model.Files;

namespace RigLang.Editing.Tests;

/// <summary>The answer to "why this number?" goes down to the lines.</summary>
public class ReasonTreeTests
{
    [Fact]
    public void A_result_leads_to_the_lines_it_was_made_from()
    {
        var reason = Reason(LoadResults.FrontAxleLoad.Compute);
        reason.Name.Should().Be("front-axle-load");
        reason.Value.Should().MatchRegex(@"^\d+ kg$");
        reason.Note.Should().Be(LoadResults.FrontAxleLoad.Formula);

        var wheelbase = reason.All().First(step => step.Name == "vehicle.wheelbase");
        wheelbase.Should().BeEquivalentTo(new { Title = "wheelbase of vehicle van", Value = "2.94 m", Sort = ReasonSort.Written });
        wheelbase.Place!.Value.File.Name.Should().Be("1-van.rig");
        Examples.Read("people-carrier/1-van.rig").Split('\n')[wheelbase.Place.Value.Range.Start.Line].Should().Contain("wheelbase");
    }

    [Fact]
    public void An_estimate_says_how_it_was_made_and_from_what()
    {
        var estimate = Reason(StabilityResults.Damping.Compute).All().First(step => step.Name == "vehicle.yaw-inertia");
        estimate.Sort.Should().Be(ReasonSort.Estimated);
        estimate.Place.Should().BeNull();
        estimate.Value.Should().EndWith(" kg·m²");
        estimate.Note.Should().NotBeEmpty();
        estimate.Because.Should().NotBeEmpty();
    }

    [Fact]
    public void A_result_without_its_fact_names_it()
    {
        var workspace = new TestWorkspace("vehicle van\n    axle front\n        carries 1195 kg\n    axle rear\n        carries 1225 kg\n\nload l\n    on vehicle\n        item x 5 kg at 1 m behind front-axle\n\nrig r\n    vehicle van\n    load l");
        var analysis = ((LanguageService)workspace.Service).Analysis;
        var rig = analysis.Rig(analysis.Workspace.Find(TestWorkspace.Main, DeclarationKind.Rig, "r")!);
        var reason = ReasonTree.Of(analysis.Workspace, LoadResults.FrontAxleLoad.Compute(rig)!, SubjectUnits.Of(rig));
        reason.Value.Should().Be("not computed: needs `wheelbase` of vehicle van");
        reason.All().Should().Contain(step => step.Sort == ReasonSort.Missing && step.Name == "vehicle.wheelbase");
    }

    [Fact]
    public void What_is_asked_at_another_speed_says_that_speed()
    {
        var reason = Reason(rig => StabilityResults.Damping.Compute(rig.AtSpeed(90 / 3.6)));
        reason.All().First(step => step.Name == "rig.speed").Value.Should().Be("90 km/h");
    }

    private static Reason Reason(Func<RigStudy, Analysis.Tracking.Node?> compute)
    {
        const string path = "people-carrier/6-rigs.rig";
        var analysis = ((LanguageService)Examples.Open(path).Current).Analysis;
        var rig = analysis.Rig(analysis.Workspace.Find(new FileId($"{Examples.Folder}/{path}"), DeclarationKind.Rig, "coast")!);
        return ReasonTree.Of(analysis.Workspace, compute(rig)!, SubjectUnits.Of(rig));
    }
}

using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Tests.Tracking;

public sealed class ReaderTests
{
    private static IEnumerable<FactRead> AllFacts(IEnumerable<Read> reads) => reads.SelectMany(read => read switch
    {
        ComputationRead inner => AllFacts(inner.Node.Reads),
        FactRead fact => AllFacts(fact.Inner).Prepend(fact),
        _ => [],
    });

    [Fact]
    public void A_result_knows_every_fact_that_it_rests_on_and_its_line()
    {
        var node = Study.Rig(Rigs.Plain("restoration 50 %")).Result("front-axle-load");

        var lines = AllFacts(node.Reads).Where(read => read.Line is not null).Select(read => read.Line!.Title).Distinct();

        lines.Should().Contain(["carries", "wheelbase", "overhang", "mass", "tongue", "coupling-to-axle", "restoration"]);
        lines.Should().NotContain("gross-rating");
    }

    [Fact]
    public void An_estimate_shows_what_it_read_in_turn()
    {
        var text = Rigs.Plain("restoration 50 %\nspeed 90 km/h").Replace("    brakes electric\n", "    brakes electric\n    body-length 6.0 m\n    width 2.3 m\n");
        var node = Study.Rig(text).Result("damping");

        node.IsEstimated.Should().BeTrue();
        var inertia = AllFacts(node.Reads).First(read => read.Fact == TrailerFacts.YawInertia);
        inertia.Origin.Should().Be(ReadOrigin.Estimate);
        inertia.Value.Should().BeApproximately(2500 / 12.0 * ((6.0 * 6.0) + (2.3 * 2.3)), 1e-6);
        inertia.Inner.OfType<FactRead>().Select(read => read.Fact.Keyword).Should().Equal("body-length", "width", "mass");
    }

    [Fact]
    public void What_an_estimate_lacks_is_named_beside_the_fact()
    {
        Study.Rig(Rigs.Plain("restoration 50 %\nspeed 90 km/h")).Result("damping").Missing!.Words
            .Should().Be("`yaw-inertia` of trailer t, or `body-length` to estimate it");
    }

    [Fact]
    public void A_practice_stands_before_the_estimate_and_behind_the_line()
    {
        var practice = "\n\npractice p\n    assume brake-ratio 40 %\n";
        double Read(string text)
        {
            var rig = Study.Rig(text + practice);
            return rig.Compute(new Computation<RigStudy, double>("probe", (read, rig) => read.Quantity(rig.Trailer, TrailerFacts.BrakeRatio)), rig).Value;
        }

        Read(Rigs.Plain("speed 80 km/h")).Should().Be(0.5);
        Read(Rigs.Plain("practice p")).Should().Be(0.4);
        Read(Rigs.Plain("practice p").Replace("brakes electric", "brakes electric\n    brake-ratio 60 %")).Should().Be(0.6);
    }

    [Fact]
    public void Another_value_for_one_fact_gives_another_study()
    {
        var rig = Study.Rig(Rigs.Plain("restoration 0 %"));

        rig.With(rig.Rig, RigFacts.Restoration, 1).Value("front-axle-load").Should().BeApproximately(1250, 1e-9);
        rig.Value("front-axle-load").Should().BeApproximately(1130, 1e-9);
    }

    [Fact]
    public void A_value_tried_for_a_fact_that_no_line_says_counts_as_written()
    {
        var text = Rigs.Plain("restoration 0 %");
        var rig = Study.Rig(text);
        var probe = new Computation<RigStudy, bool>("probe", (read, rig) => read.IsWritten(rig.Vehicle, VehicleFacts.Rolling));

        text.Should().NotContain("rolling");
        rig.Compute(probe, rig).Should().Match<Node<bool>>(node => !node.Value && ((FactRead)node.Reads[0]).Origin == ReadOrigin.Absent);
        var tried = rig.With(rig.Vehicle, VehicleFacts.Rolling, 0.012);
        tried.Compute(probe, tried).Should().Match<Node<bool>>(node => node.Value && ((FactRead)node.Reads[0]).Origin == ReadOrigin.Varied);
    }

    [Fact]
    public void A_computation_is_carried_out_once()
    {
        var runs = 0;
        var rig = Study.Rig(Rigs.Plain("restoration 0 %"));
        var counting = new Computation<RigStudy, double>("counting", (_, _) => ++runs);

        rig.Compute(counting, rig).Should().BeSameAs(rig.Compute(counting, rig));
        runs.Should().Be(1);
    }

    [Fact]
    public void A_computation_that_failed_is_carried_out_anew()
    {
        var runs = 0;
        var rig = Study.Rig(Rigs.Plain("restoration 0 %"));
        var failing = new Computation<RigStudy, double>("failing", (_, _) => ++runs == 1 ? throw new OperationCanceledException() : 7);

        rig.Invoking(study => study.Compute(failing, study)).Should().Throw<OperationCanceledException>();
        rig.Compute(failing, rig).Value.Should().Be(7);
    }

    [Fact]
    public void A_study_is_kept_while_its_parts_are_unchanged()
    {
        var analysis = Study.Of(Rigs.Plain("restoration 0 %") + "\n\nload other\n    on vehicle\n");
        var before = analysis.Rig(analysis.Workspace.Find(Study.File, Model.Declaring.DeclarationKind.Rig, "r")!);
        var file = analysis.Workspace.Find(Study.File)!;
        var end = file.Syntax.Lines.Length - 1;
        var next = analysis.With(analysis.Workspace.WithOpen(file.With(file.Syntax.WithChange(new(end, 0), new(end, 0), "# remark"))));

        next.Rig(next.Workspace.Find(Study.File, Model.Declaring.DeclarationKind.Rig, "r")!).Should().BeSameAs(before);
    }
}

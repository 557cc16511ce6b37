using RigLang.Analysis.Checks;

namespace RigLang.Analysis.Tests.Checks;

/// <summary>One slip of the pen is one error: what only follows from it waits until it is mended.</summary>
public sealed class OneSlipTests
{
    private static readonly string Pair = Allowances.AllowsNothing.Good;

    [Fact]
    public void A_vehicle_misspelt_in_the_rig_is_neither_unused_nor_without_its_axles()
    {
        var text = Pair.Replace("    vehicle van\n", "    vehicle vam\n") + "\n\nweighing w\n    rig pair\n    date 2026-05-02\n    pass solo\n        scale front 1250 kg";

        Study.Slugs(text).Should().Contain("name-unknown").And.NotContain("scaled-axle-unknown").And.NotContain("unused-declaration");
    }

    [Fact]
    public void An_axle_misspelt_in_the_vehicle_may_be_the_one_on_the_scale()
    {
        var text = Pair.Replace("    axle rear\n", "    axle back\n") + "\n\nweighing w\n    rig pair\n    date 2026-05-02\n    pass solo\n        scale rear 1250 kg";

        Study.Slugs(text).Should().Contain("wrong-form").And.NotContain("scaled-axle-unknown");
    }

    [Fact]
    public void A_departure_that_cannot_be_read_is_not_said_to_be_missing()
    {
        var text = Pair + "\n\ntrip t\n    rig pair\n    start home\n    depart 06.06.2026 6:30\n    leg a\n        distance 10 km\n    stop a\n        until 2026-06-06 17:00";

        Study.Slugs(text).Should().Contain("date-unreadable").And.NotContain("clock-unclear");
    }

    [Fact]
    public void A_part_that_no_rig_names_is_still_told() => Study.Slugs(Pair + "\n\nload july\n    on vehicle\n        item dog 20 kg at 2 m behind front-axle").Should().Contain("unused-declaration");
}

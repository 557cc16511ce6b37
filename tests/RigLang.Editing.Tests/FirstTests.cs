using RigLang.Editing.Tests.Support;

namespace RigLang.Editing.Tests;

public class FirstTests
{
    [Fact]
    public void A_finding_stands_under_what_it_is_about()
    {
        var workspace = new TestWorkspace("""
            vehicle van
                wheelbase 2.94 mm
            """);
        workspace.Service.Findings(TestWorkspace.Main, default).Should().Contain(finding => workspace.TextOf(finding.Range) == "2.94 mm");
    }
}

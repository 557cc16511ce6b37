using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Hitch;

/// <summary>A rig says in more than one way how the bars are set.</summary>
public sealed class SetTwice : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL409",
        Slug = "set-twice",
        Severity = Severity.Error,
        Summary = "A rig says in more than one way how the bars are set.",
        Why = "`restoration`, `couple` and `bar-force` are three ways to say one thing. Only one of them can be what is on the rig.",
        Bad = RigExample.Bars.With(("    restoration 50 %", "    restoration 50 %\n    couple 900 N·m")),
        Good = RigExample.Bars,
        Fix = "Keep the one that was measured or is wanted.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        var lines = BarSetting.Lines(rig);
        if (lines.Count > 1 && lines.FirstOrDefault(line => IsOwn(rig, line)) is not null)
        {
            var last = lines.Last(line => IsOwn(rig, line));
            yield return Report(rig, last, $"The bars are set by {string.Join(" and by ", lines.Select(line => $"`{line.Declaration.Keyword}`"))}. Keep one of them.")
                with { Related = [.. lines.Where(line => line != last).Select(line => new Related(line.Place, "set here too"))] };
        }
    }
}

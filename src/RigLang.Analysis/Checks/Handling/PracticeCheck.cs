using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>
/// A rig is outside what its practice limits. One result, on one side or both, has a check of its own here, so that it can be accepted by name;
/// the rest goes to <see cref="OutsidePractice"/>.
/// </summary>
/// <param name="line">The keyword of the rig's line at which the finding stands.</param>
/// <param name="sides">The results and sides that are this check's.</param>
public abstract class PracticeCheck(FactDeclaration line, params (string Result, Miss Side)[] sides) : RigCheck
{
    /// <summary>What this check speaks for.</summary>
    internal IReadOnlyList<(string Result, Miss Side)> Sides => sides;

    public override IEnumerable<Finding> Run(RigStudy rig) =>
        MissedLimit.Of(rig).Where(missed => sides.Contains((missed.Result, missed.Miss)))
            .Select(missed => Report(rig, line, $"{Says(missed)} {missed.Value}; {missed.Limit}. {Advice(missed)}") with { About = missed.About, Related = [.. missed.Related] });

    public override string? Figure(Study study, Finding finding) => study is RigStudy rig ? MissedLimit.FigureOf(rig, finding.About) : null;

    /// <summary>The message's beginning, before the value.</summary>
    private protected abstract string Says(MissedLimit missed);

    /// <summary>What it does on the road, and what to do.</summary>
    private protected abstract string Advice(MissedLimit missed);
}

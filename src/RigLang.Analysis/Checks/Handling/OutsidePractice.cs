using System.Collections.Immutable;
using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Curing;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>A result is outside a limit of the rig's practice.</summary>
public sealed class OutsidePractice : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL609",
        Slug = "outside-practice",
        Severity = Severity.Warning,
        Summary = "A result is outside a limit of the rig's practice.",
        Why = "A house limit is a decision taken at home, in calm. It doesn't loosen a rating and isn't law.",
        Bad = RigExample.Practised("ours") + """


            practice ours
                limit train-load < 4000 kg
            """,
        Good = RigExample.Practised("ours") + """


            practice ours
                limit train-load < 4500 kg
            """,
        Fix = "Change the set-up until the result fits, or the limit if the limit is wrong.",
    };

    public override ImmutableArray<Lever> Cures => [.. Levers.Loading, Levers.DriveSlower];

    private static readonly HashSet<(string, Miss)> SpokenFor = [.. HandlingChecks.OfPractice.SelectMany(check => check.Sides)];

    public override IEnumerable<Finding> Run(RigStudy rig) =>
        MissedLimit.Of(rig).Where(missed => !SpokenFor.Contains((missed.Result, missed.Miss)))
            .Select(missed => Report(rig, RigFacts.Practice, Message(missed)) with { About = missed.About, Related = [.. missed.Related] });

    public override string? Figure(Study study, Finding finding) => study is RigStudy rig ? MissedLimit.FigureOf(rig, finding.About) : null;

    internal static string Message(MissedLimit missed) =>
        $"`{missed.Result}`{(missed.Node.Subject is RigStudy ? "" : $" of {missed.Node.Subject.Title}")} is {missed.Value}; {missed.Limit}.";
}

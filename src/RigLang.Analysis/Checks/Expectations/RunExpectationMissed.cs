using RigLang.Analysis.Checks.Runs;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>An <c>expect</c> line of a run isn't met.</summary>
public sealed class RunExpectationMissed : RunCheck
{
    private static readonly ExpectationMissed Judge = new();

    public override CheckDeclaration Declaration => Judge.Declaration;

    public override IEnumerable<Finding> Run(RunStudy run) =>
        run.Block.All(EverywhereFacts.Expect).Select(Bound.Read).OfType<Bound>().Select(bound => Judge.Judge(bound, run, Judgeable.IsUnsettled(run.Parts.Run, run.Rig.Parts))).OfType<Finding>();
}

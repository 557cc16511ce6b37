using RigLang.Analysis.Checks.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>An <c>expect</c> line of a weighing isn't met.</summary>
public sealed class WeighingExpectationMissed : WeighingCheck
{
    private static readonly ExpectationMissed Judge = new();

    public override CheckDeclaration Declaration => Judge.Declaration;

    public override IEnumerable<Finding> Run(WeighingStudy weighing) =>
        weighing.Block.All(EverywhereFacts.Expect).Select(Bound.Read).OfType<Bound>().Select(bound => Judge.Judge(bound, weighing, Judgeable.IsUnsettled(weighing.Parts.Weighing, weighing.Rig.Parts))).OfType<Finding>();
}

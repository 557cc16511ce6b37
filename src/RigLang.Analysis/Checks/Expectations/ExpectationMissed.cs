using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Expectations;

/// <summary>An <c>expect</c> line isn't met.</summary>
public sealed class ExpectationMissed : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL901",
        Slug = "expectation-missed",
        Severity = Severity.Error,
        Summary = "A result is not what an `expect` line of the declaration says.",
        Why = "An expectation is a test that you wrote yourself: a set-up proven on the scale, a reserve that you won't go below.",
        Bad = """
            vehicle pick-up
                wheelbase 157 in
                axle front
                    carries 4420 lb
                axle rear
                    carries 3060 lb
                aboard nothing

            rig tour
                vehicle pick-up
                expect rear-axle-load < 3000 lb
            """,
        Good = """
            vehicle pick-up
                wheelbase 157 in
                axle front
                    carries 4420 lb
                axle rear
                    carries 3060 lb
                aboard nothing

            rig tour
                vehicle pick-up
                expect rear-axle-load < 6000 lb
            """,
        Fix = "Change the set-up until the result fits, or the expectation if it is the expectation that is wrong.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        foreach (var line in rig.Rig.All(EverywhereFacts.Expect))
        {
            if (Bound.Read(line) is { } bound && Judge(bound, rig, Judgeable.IsUnsettled(rig.Parts.Rig, rig.Parts)) is { } finding)
            {
                yield return finding;
            }
        }
    }

    /// <summary>The finding for one expectation of a subject, or null when it is met, or isn't about such a subject.</summary>
    /// <param name="bound">The expectation.</param>
    /// <param name="subject">What it is about.</param>
    /// <param name="isUnsettled">Whether lines that it rests on are in error; then it isn't said that something is missing.</param>
    internal Finding? Judge(Bound bound, ISubject subject, bool isUnsettled)
    {
        if (bound.Evaluate(subject) is { Applies: true, Missing: { } missing })
        {
            return isUnsettled ? null : ExpectationUntested.Report(bound, missing);
        }

        if (bound.Evaluate(subject) is not { IsComputed: true } node || bound.Judge(node.Value) is var miss && miss == Miss.None)
        {
            return null;
        }

        return Report(bound.Line.Place, $"`{bound.Result.Name}` is {QuantityWriter.WriteLike(node.Value, bound.Written)}{Mark(node)}, expected {bound.Words}.");
    }
}

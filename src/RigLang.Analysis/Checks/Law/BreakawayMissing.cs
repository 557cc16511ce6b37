using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Law;

/// <summary>A braked trailer doesn't brake by itself when it separates, or nobody has said so.</summary>
public sealed class BreakawayMissing() : LawCheck("de", "us")
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL414",
        Slug = "breakaway-missing",
        Severity = Severity.Warning,
        Summary = "A braked trailer doesn't brake by itself when it separates, or nobody has said so.",
        Why = "A trailer that comes off goes on alone. The breakaway cable or switch is what stops it before it meets somebody.",
        Bad = RigExample.Ruled("de").With(("brakes overrun", "brakes overrun\n    breakaway no")),
        Good = RigExample.Ruled("de"),
        Fix = "Fit a breakaway cable or switch and write `breakaway yes`.",
        Source = "StVZO section 41(9), read in the state of 2022-03-26; 49 CFR 393.43(d), value from memory",
    };

    private protected override IEnumerable<Finding> Judge(RigStudy rig, string rules)
    {
        if (!rig.HasTrailer || rig.Parts.Trailer is not { } trailer || Word(rig.Trailer, TrailerFacts.Brakes) is null or "none" || Answer(rig.Trailer, TrailerFacts.Breakaway) == true)
        {
            yield break;
        }

        var source = rules == "us" ? "49 CFR 393.43(d), value from memory, for commercial vehicles; states have their own" : $"StVZO 41(9), {AsRead}";
        var isKnown = Answer(rig.Trailer, TrailerFacts.Breakaway) == false;
        yield return Report(
            rig, RigFacts.Trailer,
            isKnown ? $"{trailer} doesn't brake by itself when it comes off; the law asks for it ({source})." : $"Does {trailer} brake by itself when it comes off? The law asks for it ({source}); write `breakaway yes` once you have seen it.") with
        {
            Severity = isKnown ? Severity.Warning : Severity.Note,
        };
    }
}

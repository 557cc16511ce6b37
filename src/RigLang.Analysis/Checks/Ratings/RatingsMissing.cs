using RigLang.Analysis.Checks.Examples;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>Facts that the first verdict wants aren't written yet.</summary>
public sealed class RatingsMissing : RigCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL311",
        Slug = "ratings-missing",
        Severity = Severity.Note,
        Summary = "Facts that the first verdict wants aren't written yet.",
        Why = "Without a rating nothing can be said to be within it, and without what the axles carry nothing can be compared at all.",
        Bad = RigExample.Pair.With(("    combined-rating 5000 kg\n", "")),
        Good = RigExample.Pair,
        Fix = "Read them off the plates and papers and write them in; `NAME ?` says that somebody is asking.",
    };

    public override IEnumerable<Finding> Run(RigStudy rig)
    {
        var parts = rig.Parts;
        foreach (var (fact, part) in new[] { (RigFacts.Vehicle, parts.Vehicle), (RigFacts.Trailer, parts.Trailer), (RigFacts.Hitch, parts.Hitch) })
        {
            // A rig like another says again what that one says; the first one is enough.
            if (part is null || Judgeable.IsInError(part) || rig.Rig.Find(fact) is not { } line || !IsOwn(rig, line))
            {
                continue;
            }

            var missing = Wanted.Missing(rig, part.Block).ToList();
            if (missing.Count > 0)
            {
                yield return Report(rig, line, $"Not yet said of {part}: {string.Join(", ", missing)}. Until then the verdict stays open.");
            }
        }
    }
}

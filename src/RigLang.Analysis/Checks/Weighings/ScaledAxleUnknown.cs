using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>A `scale` or `arch` line names an axle that the rig does not have.</summary>
public sealed class ScaledAxleUnknown : WeighingCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL806",
        Slug = "scaled-axle-unknown",
        Severity = Severity.Error,
        Summary = "A `scale` or `arch` line names an axle that the rig does not have.",
        Why = "A reading without an owner can be compared with nothing.",
        Bad = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass coupled
                    scale middle 1210 kg
            """),
        Good = WeighingExample.Of("""
            weighing may
                rig pair
                date 2026-05-02
                pass coupled
                    scale front 1210 kg
            """),
        Fix = "Write `front`, `rear`, a trailer axle by its name, `trailer` for all of them, or `tongue`.",
    };

    public override IEnumerable<Finding> Run(WeighingStudy weighing)
    {
        foreach (var pass in weighing.Passes)
        {
            // A part that isn't found, or an axle without its name, is reported where it stands; its axles may be the ones meant.
            if (pass.Rig.Parts.Vehicle is null || pass.Rig.Axles.Any(axle => axle.Axle.Key.Length == 0) || (pass.Rig.HasTrailer && pass.Rig.Parts.Trailer is null))
            {
                continue;
            }

            var known = pass.Rig.Axles.Select(axle => axle.Axle.Key).ToList();
            foreach (var line in pass.Block.All(PassFacts.Scale).Where(line => line.IsComplete))
            {
                var words = ReadingSubject.WordsOf(line);
                if (words.FirstOrDefault(word => !known.Contains(word) && word is not ("trailer" or "tongue" or "left" or "right")) is { } unknown)
                {
                    yield return Unknown(line.PlaceOf("axles"), unknown, known);
                }
            }

            foreach (var line in pass.Block.All(PassFacts.Arch).Where(line => line.WordOf("axle") is { } axle && !known.Contains(axle)))
            {
                yield return Unknown(line.PlaceOf("axle"), line.WordOf("axle")!, known);
            }
        }
    }

    private Finding Unknown(Place place, string word, List<string> known) =>
        Report(place, $"The rig has no axle `{word}`. It has {string.Join(", ", known.Select(axle => $"`{axle}`"))}; `trailer` means all of the trailer's, `tongue` the coupling on a scale of its own.");
}

using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;

namespace RigLang.Benchmarks;

/// <summary>Every result of a rig and its axles, asked of a study that knows none yet, or of one in which one fact differs.</summary>
internal static class AllResults
{
    private static readonly IResult[] OfRigs = [.. Catalogue.Of(ResultScope.Rig)], OfAxles = [.. Catalogue.Of(ResultScope.Axle)];

    public static int Count(RigStudy study) => OfRigs.Length + (OfAxles.Length * (study.VehicleAxles.Length + study.TrailerAxles.Length));

    /// <summary>How many have a value.</summary>
    public static int Compute(RigStudy study)
    {
        var computed = 0;
        foreach (var result in OfRigs)
        {
            computed += result.Compute(study)!.IsComputed ? 1 : 0;
        }

        foreach (var axle in study.VehicleAxles.Concat(study.TrailerAxles))
        {
            foreach (var result in OfAxles)
            {
                computed += result.Compute(axle)!.IsComputed ? 1 : 0;
            }
        }

        return computed;
    }

    /// <summary>The same rig with another tongue load.</summary>
    public static RigStudy Varied(RigStudy study, int number) => study.With(study.Trailer, TrailerFacts.Tongue, 60 + (number % 50));
}

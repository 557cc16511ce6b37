using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>The checks of tyres.</summary>
public static class TyreChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new TyresOverloaded(), new PressureTooLow(), new TyresBelowAxleRating(), new TyreTooSlow(), new PressureAboveRated(),
        new ServiceDescriptionMissing(), new TrailerTyreOld(),
    ];
}

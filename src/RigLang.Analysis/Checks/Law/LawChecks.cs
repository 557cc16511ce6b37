using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Law;

/// <summary>The checks of dated facts of law, for rigs that name their `rules`.</summary>
public static class LawChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new TowedOverLaw(), new UnbrakedTooHeavy(), new BrakesMissing(), new TongueBelowLaw(), new LicenceTooSmall(), new BreakawayMissing(),
        new SpeedOverLaw(), new SpeedOverLawOnTrip(),
    ];
}

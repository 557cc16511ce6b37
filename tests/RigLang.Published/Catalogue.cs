namespace RigLang.Published;

/// <summary>Every published check, model by model.</summary>
public static class Catalogue
{
    public static IReadOnlyList<PublishedCheck> All { get; } =
    [
        .. UnitChecks.All,
        .. StaticsChecks.All,
        .. CouplingChecks.All,
        .. RegulationChecks.All,
        .. TyreChecks.All,
        .. AirChecks.All,
        .. RoadLoadChecks.All,
        .. EnergyChecks.All,
        .. StabilityChecks.All,
        .. TrendChecks.All,
        .. PowerChecks.All,
        .. BrakingChecks.All,
        .. CalibrationChecks.All,
    ];
}

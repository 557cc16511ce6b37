using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Rigs;

/// <summary>The hardest worked tyre of a rig.</summary>
public static class TyreUseResult
{
    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> TyreUse { get; } = Set.Add(
        "tyre-use", QuantityKinds.Ratio, "Most used tyre", "the largest share of what a tyre carries at its pressure; the reasons name which axle. Axles whose tyres or pressures nobody said are left out",
        "largest tyre-share of the axles", "definition",
        (read, rig) =>
        {
            var shares = rig.Axles.Select(axle => read.GetIfKnown(TyreResults.Share, axle)).OfType<double>().ToList();
            if (shares.Count > 0)
            {
                return shares.Max();
            }

            // None is known: what the first axle lacks is what to ask for.
            if (rig.Axles.FirstOrDefault() is { } first)
            {
                return read.Get(TyreResults.Share, first);
            }

            read.Need(rig.Vehicle, VehicleFacts.Axle);
            return double.NaN;
        });
}

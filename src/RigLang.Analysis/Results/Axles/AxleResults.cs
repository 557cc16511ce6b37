using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Mechanics;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Axles;

/// <summary>What one axle carries.</summary>
public static class AxleResults
{
    public static ResultSet<AxleSubject> Set { get; } = new(ResultScope.Axle);

    public static ResultDeclaration<AxleSubject> Load { get; } = Set.Add(
        "axle-load", QuantityKinds.Mass, "Axle load", "on this axle, coupled as driven; of equal axles, on each",
        "front-axle-load, rear-axle-load, or this axle's share of trailer-axle-load", "moments; equalised axles share equally, independent ones by their springs and the coupling's height",
        (read, axle) => axle.IsTrailer
            ? read.Get(LoadStates.TrailerAxles, axle.Rig) is var loads && IndexOf(read, axle) is var index && index < loads.Count ? loads[index] / Constants.Gravity : double.NaN
            : read.Get(axle.Axle.Key == "front" ? LoadResults.FrontAxleLoad : LoadResults.RearAxleLoad, axle.Rig));

    public static ResultDeclaration<AxleSubject> Use { get; } = Set.Add(
        "axle-use", QuantityKinds.Ratio, "Of the axle's rating", "axle load as a share of what the axle may carry",
        "axle-load ÷ axle-rating", "definition",
        (read, axle) => read.Get(Load, axle) / read.Quantity(axle.Axle, axle.Facts.AxleRating));

    /// <summary>The place of the first of this block's axles among all the trailer's axles.</summary>
    private static int IndexOf(Tracking.Reader read, AxleSubject axle)
    {
        var index = 0;
        foreach (var other in axle.Rig.TrailerAxles)
        {
            if (ReferenceEquals(other, axle))
            {
                break;
            }

            index += (int)Math.Clamp(read.Quantity(other.Axle, other.Facts.EqualAxles!), 1, 9);
        }

        return index;
    }
}

using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>Looks at a weighing with its rig.</summary>
public abstract class WeighingCheck : Check
{
    public abstract IEnumerable<Finding> Run(WeighingStudy weighing);

    /// <summary>A mass in the unit of the scale.</summary>
    private protected static string Kilograms(double mass, WeighingStudy weighing) =>
        weighing.Passes.SelectMany(pass => pass.Readings).SelectMany(reading => reading.Lines).FirstOrDefault()?.MeasureOf("mass") is { } like
            ? QuantityWriter.WriteLike(mass, like)
            : QuantityWriter.Write(mass, QuantityKinds.Mass, DisplaySystem.Metric);
}

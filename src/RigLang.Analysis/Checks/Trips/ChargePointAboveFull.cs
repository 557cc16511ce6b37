using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A point of the charging curve lies beyond full or below empty, or takes less than nothing.</summary>
public sealed class ChargePointAboveFull : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL723",
        Slug = "charge-point-above-full",
        Severity = Severity.Error,
        Summary = "A point of the charging curve lies outside 0 % to 100 %, or has no power.",
        Why = "No charging time can be computed over such a curve. Most often the percent sign is missing.",
        Bad = """
            vehicle van
                electric
                    charge-point 10 120 kW
                    charge-point 100 % 8 kW
            """,
        Good = """
            vehicle van
                electric
                    charge-point 10 % 120 kW
                    charge-point 100 % 8 kW
            """,
        Fix = "Write the charge in percent, and a power above zero.",
        CanBeAllowed = false,
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind != DeclarationKind.Vehicle || declaration.Block.FindBlock(ElectricFacts.Block) is not { } electric)
        {
            yield break;
        }

        foreach (var line in electric.All(ElectricFacts.ChargePoint).Where(line => line.Place.Declaration == declaration.Own.Syntax))
        {
            if (line.MeasureOf("charge") is { } charge && (charge.Value < 0 || Limits.Exceeds(charge.Value, 1)))
            {
                yield return Report(line.PlaceOf("charge"), $"A charge of {charge.Text} is {QuantityWriter.Write(charge.Value, QuantityKinds.Ratio, DisplaySystem.Metric)}; it lies between 0 % and 100 %. Write it in percent.");
            }
            else if (line.MeasureOf("power") is { Value: <= 0 } power)
            {
                yield return Report(line.PlaceOf("power"), $"{power.Text} never gets the battery any fuller. Write what it takes there, if it is only little.");
            }
        }
    }
}

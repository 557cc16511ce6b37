using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Model.Estimates;

/// <summary>What stands in for facts of a drive.</summary>
internal static class DriveEstimates
{
    public static Estimate RegenerationPower { get; } = new(
        "40 % of motor-power", "our choice", (read, drive) => 0.4 * read.Quantity(drive, ElectricFacts.MotorPower), 0.4);

    public static Estimate RetardingPower { get; } = new(
        "10 % of engine-power, in a low gear", "our choice, weak", (read, drive) => 0.1 * read.Quantity(drive, CombustionFacts.EnginePower), 0.5);

    public static Estimate DrivelineEfficiency { get; } = new(
        "92 % manual, 88 % automatic", "common practice, values from memory",
        (read, drive) => read.Word(drive, CombustionFacts.Transmission) switch { "manual" => 0.92, "automatic" => 0.88, _ => double.NaN },
        0.04);
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>One logged drive at a steady pace.</summary>
/// <param name="Distance">m, above zero.</param>
/// <param name="Speed">m/s, above zero.</param>
/// <param name="Rise">Height gained, m.</param>
/// <param name="HeadWind">m/s, against the drive positive.</param>
/// <param name="Density">Air density, kg/m³.</param>
/// <param name="Mass">Of the rig, kg.</param>
/// <param name="Energy">Out of the battery, J.</param>
/// <param name="EnergyError">Standard deviation of that, J, above zero.</param>
/// <param name="Auxiliary">Power of everything but the drive, W.</param>
public readonly record struct LoggedRun(
    double Distance, double Speed, double Rise, double HeadWind, double Density, double Mass, double Energy, double EnergyError, double Auxiliary);

/// <summary>Rolling coefficient and drag area from logged drives.</summary>
/// <param name="Rolling">Coefficient; NaN if the drives cannot tell it.</param>
/// <param name="DragArea">m²; NaN if the drives cannot tell it.</param>
/// <param name="RollingError">Standard deviation.</param>
/// <param name="DragAreaError">Standard deviation, m².</param>
/// <param name="Fit">The fit behind them, residuals in J at the wheels.</param>
public sealed record RunFit(double Rolling, double DragArea, double RollingError, double DragAreaError, FitResult Fit)
{
    /// <summary>Drives so much alike that rolling and air look the same are refused at this condition.</summary>
    public const double WorstCondition = 60;

    /// <summary>
    /// Weighted linear least squares of η (E − P t) − m g Δh = C_rr m g d + C_dA ½ ρ (v + w)² d. Drives all at one speed cannot tell rolling from air: refused.
    /// Valid for drives with little held back by regeneration or brakes.
    /// </summary>
    /// <param name="runs">At least two.</param>
    /// <param name="driveEfficiency">Battery to wheel, above 0, to 1.</param>
    public static RunFit Of(ReadOnlySpan<LoggedRun> runs, double driveEfficiency)
    {
        double efficiency = Positive(Within(driveEfficiency, 0, 1));
        double[] design = new double[runs.Length * 2], work = new double[runs.Length], deviations = new double[runs.Length];
        for (int i = 0; i < runs.Length; i++)
        {
            LoggedRun run = runs[i];
            double weight = Positive(run.Mass) * Constants.Gravity, airSpeed = Positive(run.Speed) + run.HeadWind;
            design[2 * i] = weight * Positive(run.Distance);
            design[(2 * i) + 1] = 0.5 * Positive(run.Density) * airSpeed * Math.Abs(airSpeed) * run.Distance;
            work[i] = (efficiency * (run.Energy - (NotNegative(run.Auxiliary) * run.Distance / run.Speed))) - (weight * run.Rise);
            deviations[i] = efficiency * Positive(run.EnergyError);
        }

        FitResult fit = LeastSquares.Fit(design, work, deviations, 2, WorstCondition);
        return new RunFit(fit.Values[0], fit.Values[1], fit.Errors[0], fit.Errors[1], fit);
    }
}

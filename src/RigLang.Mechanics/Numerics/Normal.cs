using MathNet.Numerics;
using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>The normal distribution, as far as a doubt is taken to follow it.</summary>
public static class Normal
{
    /// <summary>Chance of a value below a limit, 0 to 1. Φ((limit − mean) ÷ deviation).</summary>
    /// <param name="mean">In any unit, that of the limit.</param>
    /// <param name="deviation">Standard deviation, not below zero; with zero the chance is 0 or 1.</param>
    /// <param name="limit">In the same unit.</param>
    /// <returns>NaN outside the domain.</returns>
    public static double ChanceBelow(double mean, double deviation, double limit)
    {
        double gap = Finite(limit - mean);
        if (deviation == 0 && !double.IsNaN(gap))
            return gap > 0 ? 1 : 0;
        return Finite(SpecialFunctions.Erfc(-gap / (Positive(deviation) * Math.Sqrt(2))) / 2);
    }

    /// <summary>The value below which a standard normal draw stays with this chance.</summary>
    /// <param name="chance">Above 0, below 1.</param>
    public static double Quantile(double chance) => chance is > 0 and < 1 ? Finite(-Math.Sqrt(2) * SpecialFunctions.ErfcInv(2 * chance)) : double.NaN;
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// Damping read from a swing that dies away, as ISO 9815 evaluates it (value from memory). Peaks are counted at every extreme, once to the left and once to
/// the right: a swing has
/// two. Formulas for whole swings take every second one; mixing the two doubles or halves the damping.
/// </summary>
public static class OscillationDecay
{
    /// <summary>Sizes of successive extremes of alternating sign, from a sample on; each refined by the parabola through three samples.</summary>
    /// <param name="values">Samples in even steps around zero.</param>
    /// <param name="from">Number of the first sample to look at.</param>
    public static IReadOnlyList<double> Peaks(IReadOnlyList<double> values, int from)
    {
        var peaks = new List<double>();
        double lastSign = 0;
        for (int i = Math.Max(1, from); i + 1 < values.Count; i++)
        {
            double before = values[i - 1], here = values[i], after = values[i + 1], sign = double.IsNaN(here) ? 0 : Math.Sign(here);
            bool isExtreme = sign != 0 && sign * (here - before) > 0 && sign * (here - after) >= 0;
            if (!isExtreme)
                continue;
            double curvature = before - (2 * here) + after, slope = (after - before) / 2;
            double size = Math.Abs(here - (curvature == 0 ? 0 : slope * slope / (2 * curvature)));
            if (sign == lastSign)
                peaks[^1] = Math.Max(peaks[^1], size);
            else
                peaks.Add(size);
            lastSign = sign;
        }

        return peaks;
    }

    /// <summary>Mean ratio of neighbouring half-swing peaks: of (A_i + A_i+1)/(A_i+1 + A_i+2). NaN for fewer than three peaks.</summary>
    public static double MeanRatio(IReadOnlyList<double> peaks)
    {
        double sum = 0;
        for (int i = 0; i + 2 < peaks.Count; i++)
            sum += (peaks[i] + peaks[i + 1]) / (peaks[i + 1] + peaks[i + 2]);
        return peaks.Count < 3 ? double.NaN : Finite(sum / (peaks.Count - 2));
    }

    /// <summary>Damping ratio from the ratio of half-swing peaks (every extreme counted).</summary>
    public static double FromHalfSwings(double ratio) => FromRatio(ratio, Math.PI);

    /// <summary>Damping ratio from the ratio of whole-swing peaks (every second extreme).</summary>
    public static double FromWholeSwings(double ratio) => FromRatio(ratio, 2 * Math.PI);

    /// <summary>Ratio of half-swing peaks of a damping ratio between −1 and 1.</summary>
    public static double HalfSwingRatio(double damping) => Finite(Math.Exp(Math.PI * damping / Math.Sqrt(Positive(1 - (damping * damping)))));

    /// <summary>Damping ratio of a recorded or simulated response, from a sample on.</summary>
    public static double Of(IReadOnlyList<double> values, int from) => FromHalfSwings(MeanRatio(Peaks(values, from)));

    private static double FromRatio(double ratio, double turn)
    {
        double logarithm = Math.Log(Positive(ratio));
        return Finite(logarithm / Math.Sqrt((turn * turn) + (logarithm * logarithm)));
    }
}

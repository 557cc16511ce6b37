using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Sums over a profile of heights.</summary>
/// <param name="Climb">Sum of all rises, m.</param>
/// <param name="Descent">Sum of all falls, m.</param>
/// <param name="SteepestUp">Largest grade, rise over run.</param>
/// <param name="SteepestDown">Smallest grade, negative downhill.</param>
public readonly record struct ProfileTotals(double Climb, double Descent, double SteepestUp, double SteepestDown);

/// <summary>
/// Heights along a track. A recorded height wanders by some metres, and a sum of rises counts the wandering as climb. The smoothed profile is the taut
/// string inside a band of recorded height ± half-width: of all profiles in that band none climbs less, so no climb is invented; each hill may come out low
/// by up to
/// twice the half-width. Start and end keep their recorded heights, so the net rise is exact.
/// </summary>
public static class ElevationProfile
{
    /// <summary>Half-width of the band for satellite or map heights, m (our choice).</summary>
    public const double DefaultBand = 4;

    /// <summary>A single height that stands out from both neighbours by more than this grade is no road.</summary>
    private const double ImpossibleGrade = 0.35;

    /// <summary>Heights with missing ones (NaN) drawn straight between their neighbours, or level beyond the first and last known one.</summary>
    /// <param name="distances">Ascending, m.</param>
    /// <param name="heights">m, as many as distances.</param>
    /// <returns>All NaN if none is known or the lengths differ.</returns>
    public static double[] FillGaps(ReadOnlySpan<double> distances, ReadOnlySpan<double> heights)
    {
        double[] filled = new double[heights.Length];
        if (distances.Length != heights.Length)
        {
            Array.Fill(filled, double.NaN);
            return filled;
        }

        int last = -1;
        for (int i = 0; i < heights.Length; i++)
        {
            filled[i] = Finite(heights[i]);
            if (double.IsNaN(filled[i]))
                continue;
            for (int gap = last + 1; gap < i; gap++)
            {
                double share = last < 0 ? 1 : Within((distances[gap] - distances[last]) / (distances[i] - distances[last]), 0, 1);
                filled[gap] = last < 0 ? filled[i] : filled[last] + (share * (filled[i] - filled[last]));
            }

            last = i;
        }

        for (int i = last + 1; last >= 0 && i < filled.Length; i++)
            filled[i] = filled[last];
        return filled;
    }

    /// <summary>The taut string within the band, at the same points.</summary>
    /// <param name="distances">Not descending, m.</param>
    /// <param name="heights">m, as many as distances, without gaps.</param>
    /// <param name="band">Half-width, m, zero or above.</param>
    /// <returns>All NaN if a number is missing, distances descend, or the lengths differ.</returns>
    public static double[] Smooth(ReadOnlySpan<double> distances, ReadOnlySpan<double> heights, double band = DefaultBand)
    {
        double[] result = new double[heights.Length];
        if (!IsUsable(distances, heights) || double.IsNaN(NotNegative(band)))
        {
            Array.Fill(result, double.NaN);
            return result;
        }

        WithoutOutliers(distances, heights, result);
        new TautString(distances, result, band).Draw();
        return result;
    }

    /// <summary>How often a profile rises from a foot to a top; level stretches between belong to neither.</summary>
    public static int Hills(ReadOnlySpan<double> heights)
    {
        int hills = 0;
        bool rising = false;
        for (int i = 1; i < heights.Length; i++)
        {
            double rise = heights[i] - heights[i - 1];
            if (rise > 0 && !rising)
                hills++;
            rising = rise > 0 || (rising && rise == 0);
        }

        return hills;
    }

    /// <summary>Climb, descent and steepest grades of a profile; grades over stretches of at least <paramref name="baseLength"/> metres.</summary>
    public static ProfileTotals Totals(ReadOnlySpan<double> distances, ReadOnlySpan<double> heights, double baseLength = 100)
    {
        if (!IsUsable(distances, heights) || heights.Length < 2)
            return new ProfileTotals(double.NaN, double.NaN, double.NaN, double.NaN);
        double climb = 0, descent = 0, up = double.NegativeInfinity, down = double.PositiveInfinity;
        int back = 0;
        for (int i = 1; i < heights.Length; i++)
        {
            double rise = heights[i] - heights[i - 1];
            climb += Math.Max(0, rise);
            descent += Math.Max(0, -rise);
            while (back + 1 < i && distances[i] - distances[back + 1] >= baseLength)
                back++;
            double run = distances[i] - distances[back];
            if (run < baseLength && (i < heights.Length - 1 || back > 0))
                continue;
            up = Math.Max(up, (heights[i] - heights[back]) / run);
            down = Math.Min(down, (heights[i] - heights[back]) / run);
        }

        return new ProfileTotals(climb, descent, Finite(up), Finite(down));
    }

    private static bool IsUsable(ReadOnlySpan<double> distances, ReadOnlySpan<double> heights)
    {
        if (distances.Length != heights.Length)
            return false;
        for (int i = 0; i < heights.Length; i++)
        {
            if (!double.IsFinite(heights[i]) || !double.IsFinite(distances[i]) || (i > 0 && distances[i] < distances[i - 1]))
                return false;
        }

        return true;
    }

    private static void WithoutOutliers(ReadOnlySpan<double> distances, ReadOnlySpan<double> heights, Span<double> result)
    {
        heights.CopyTo(result);
        for (int i = 1; i + 1 < heights.Length; i++)
        {
            double before = heights[i] - heights[i - 1], after = heights[i] - heights[i + 1];
            double runBefore = distances[i] - distances[i - 1], runAfter = distances[i + 1] - distances[i];
            bool standsOut = before * after > 0 && Math.Abs(before) > ImpossibleGrade * runBefore && Math.Abs(after) > ImpossibleGrade * runAfter;
            if (standsOut)
                result[i] = heights[i - 1] + ((heights[i + 1] - heights[i - 1]) * (runBefore + runAfter > 0 ? runBefore / (runBefore + runAfter) : 0.5));
        }
    }
}

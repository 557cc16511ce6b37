namespace RigLang.Analysis.Curing;

/// <summary>
/// The least change of a number that makes a finding go away, in whole steps of its last written digit: what comes out is what will stand in the file, so it can't
/// be rounded to the wrong side. Steps are doubled until one cures, then halved back; so a few dozen looks are enough for any number, and what is found first is
/// near to what is there.
/// </summary>
internal static class LeastChange
{
    /// <summary>SI; null where no step up to the end cures.</summary>
    /// <param name="handle">The number.</param>
    /// <param name="sign">+1 upward, −1 downward.</param>
    /// <param name="isCured">For a value in SI.</param>
    public static double? Find(Handle handle, int sign, Func<double, bool> isCured)
    {
        var step = Math.Pow(10, -handle.Decimals);
        var written = Math.Round(handle.Unit.FromSi(handle.Now) / step);
        double At(long steps) => handle.Unit.ToSi(Math.Round((written + (sign * steps)) * step, Math.Max(0, handle.Decimals)));
        // What is written may itself lie beyond the other end: a restoration of 120 %.
        bool IsInside(long steps) => sign > 0 ? At(steps) <= handle.High + Tolerance(handle.High) : At(steps) >= handle.Low - Tolerance(handle.Low);

        // Most numbers cure nothing, and that should cost little: what helps at all helps at the far end or half-way there.
        var far = sign > 0 ? handle.High : handle.Low;
        if (!(Math.Abs(far - handle.Now) > 0) || (!isCured(far) && !isCured((far + handle.Now) / 2)))
        {
            return null;
        }

        long before = 0, cured = 1;
        while (true)
        {
            if (!IsInside(cured))
            {
                // The end itself may be nearer than the doubled step.
                cured = LastInside(before, cured, IsInside);
                if (cured == before || !isCured(At(cured)))
                {
                    return null;
                }

                break;
            }

            if (isCured(At(cured)))
            {
                break;
            }

            (before, cured) = (cured, 2 * cured);
        }

        while (cured - before > 1)
        {
            var middle = before + ((cured - before) / 2);
            (before, cured) = isCured(At(middle)) ? (before, middle) : (middle, cured);
        }

        return At(cured);
    }

    private static long LastInside(long inside, long outside, Func<long, bool> isInside)
    {
        while (outside - inside > 1)
        {
            var middle = inside + ((outside - inside) / 2);
            (inside, outside) = isInside(middle) ? (middle, outside) : (inside, middle);
        }

        return inside;
    }

    private static double Tolerance(double end) => 1e-9 * Math.Max(1, Math.Abs(end));
}

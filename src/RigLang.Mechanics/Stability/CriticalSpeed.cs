using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>From which speed on a rig is unstable, by two ways of losing it.</summary>
public static class CriticalSpeed
{
    private const double LowestSpeed = 1;

    /// <summary>
    /// Speeds at which a swing neither grows nor dies (snaking), up to a highest speed, m/s. At such a speed the third Hurwitz determinant of the
    /// characteristic
    /// polynomial changes its sign while the pair of eigenvalues is imaginary.
    /// </summary>
    public static SearchResult Snaking(LateralRig rig, double highest)
    {
        if (!rig.IsComputable || !(highest > LowestSpeed) || !double.IsFinite(highest))
            return SearchResult.NotComputable;
        SearchResult signs = Root.Find(speed => Hurwitz(rig, speed), LowestSpeed, highest, steps: 48);
        if (signs.Outcome == SearchOutcome.NotComputable)
            return signs;
        double[] swings = [.. signs.Places.Where(speed => IsSwing(rig, speed))];
        SearchOutcome outcome = swings.Length switch { 0 => SearchOutcome.None, 1 => SearchOutcome.One, _ => SearchOutcome.Several };
        return new SearchResult(outcome, swings);
    }

    /// <summary>
    /// Speed from which a coupled vehicle turns away without swinging (divergence), m/s: √(−L/K) for an oversteering one. It depends on the tow vehicle and the
    /// tongue mass alone. NaN if there is none (K zero or above) or K is not known.
    /// </summary>
    /// <param name="wheelbase">m, above zero.</param>
    /// <param name="understeer">K, rad/(m/s²); see <see cref="Understeer"/>.</param>
    public static double Divergence(double wheelbase, double understeer) => Finite(Math.Sqrt(Positive(wheelbase) / Positive(-understeer)));

    /// <summary>Speed at which an understeering vehicle answers the wheel most keenly (characteristic speed), m/s: √(L/K). NaN if there is none.</summary>
    public static double Characteristic(double wheelbase, double understeer) => Finite(Math.Sqrt(Positive(wheelbase) / Positive(understeer)));

    private static double Hurwitz(LateralRig rig, double speed)
    {
        (double p3, double p2, double p1, double p0) = SmallMatrix.CharacteristicPolynomial(SingleTrackModel.System(rig, speed));
        return (p1 * ((p2 * p3) - p1)) - (p3 * p3 * p0);
    }

    private static bool IsSwing(LateralRig rig, double speed)
    {
        (double p3, _, double p1, _) = SmallMatrix.CharacteristicPolynomial(SingleTrackModel.System(rig, speed));
        return p1 / p3 > 0;
    }
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>What a drive can hold on a hill.</summary>
public static class Gradeability
{
    /// <summary>
    /// Steepest grade on which a force at the wheels holds a speed, rise over run; negative if not even the level is held, NaN if the force would lift the rig.
    /// Exact: the force left over air balances weight · (C cosθ + sinθ).
    /// </summary>
    /// <param name="load">The rig.</param>
    /// <param name="force">At the wheels, N; from the drive or from the friction of the driven axle, whichever is less.</param>
    /// <param name="speed">m/s.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="wind">Wind over the road.</param>
    public static double SteepestGrade(RoadLoad load, double force, double speed, double density, Wind wind = default)
    {
        double rolling = load.Rolling.At(speed);
        double air = speed == 0 && wind == Wind.Calm ? 0 : load.AirForce(speed, density, wind);
        double sine = (force - air) / (Positive(load.Mass) * Constants.Gravity * Math.Sqrt(1 + (rolling * rolling)));
        double angle = Math.Asin(sine) - Math.Atan(rolling);
        return Math.Abs(angle) < Math.PI / 2 ? Finite(Math.Tan(angle)) : double.NaN;
    }

    /// <summary>
    /// Highest speed, m/s, that a drive holds on a grade, to 1 mm/s; 0 if it cannot move up it at all. A rig that could go faster than <paramref name="cap"/>
    /// gets the cap.
    /// </summary>
    /// <param name="load">The rig.</param>
    /// <param name="drive">Its drive.</param>
    /// <param name="grade">Rise over run.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="cap">m/s, above zero, to 200.</param>
    /// <param name="wind">Wind over the road.</param>
    public static double HighestSpeed(RoadLoad load, WheelDrive drive, double grade, double density, double cap, Wind wind = default)
    {
        double top = Positive(Within(cap, 0, 200));
        double Surplus(double speed) => drive.Force(speed) - load.Force(speed, density, wind, grade);
        double surplus = Surplus(top);
        if (double.IsNaN(surplus))
            return double.NaN;
        if (surplus >= 0)
            return top;
        const int steps = 120;
        for (int i = steps - 1; i >= 1; i--)
        {
            double low = top * i / steps, atLow = Surplus(low);
            if (double.IsNaN(atLow))
                return double.NaN;
            if (atLow >= 0)
                return Between(Surplus, low, top * (i + 1) / steps);
        }

        return 0;
    }

    private static double Between(Func<double, double> surplus, double low, double high)
    {
        while (high - low > 0.001)
        {
            double middle = (low + high) / 2;
            if (surplus(middle) >= 0)
                low = middle;
            else
                high = middle;
        }

        return low;
    }
}

using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// The linear single-track model, state [lateral speed, yaw rate, articulation rate, articulation angle] of the vehicle's mass centre and the trailer against
/// it:
/// <c>M ẋ = D x + B δ</c>, δ the steer angle. x forward, y left, yaw to the left positive; articulation is trailer yaw less vehicle yaw.
/// </summary>
public static class SingleTrackModel
{
    /// <summary>The inertia matrix M, kg, kg·m and kg·m²; rows of four.</summary>
    public static double[] Inertia(LateralRig rig)
    {
        double m1 = rig.VehicleMass, m2 = rig.TrailerMass, h1 = rig.ToBall, l1 = rig.TrailerMassCentre;
        return
        [
            m1 + m2, -m2 * (h1 + l1), -m2 * l1, 0,
            -m2 * h1, rig.VehicleInertia + (m2 * h1 * (h1 + l1)), m2 * h1 * l1, 0,
            -m2 * l1, rig.TrailerInertia + (m2 * l1 * (h1 + l1)), rig.TrailerInertia + (m2 * l1 * l1), 0,
            0, 0, 0, 1,
        ];
    }

    /// <summary>The matrix D of forces at a speed (m/s, above zero); rows of four.</summary>
    public static double[] Forces(LateralRig rig, double speed)
    {
        double m1 = rig.VehicleMass, m2 = rig.TrailerMass, a = rig.ToFront, b = rig.ToRear, h1 = rig.ToBall, l1 = rig.TrailerMassCentre, l2 = rig.TrailerAxle;
        double cf = rig.FrontStiffness, cr = rig.RearStiffness, ct = rig.TrailerStiffness, c = rig.HitchDamping, u = Positive(speed);
        double turning = (a * cf) - (b * cr) - (h1 * ct);
        return
        [
            -(cf + cr + ct) / u, (-(m1 + m2) * u) - ((turning - (l2 * ct)) / u), ct * l2 / u, ct,
            -turning / u, (m2 * h1 * u) - (((a * a * cf) + (b * b * cr) + (h1 * (h1 + l2) * ct)) / u), (-h1 * l2 * ct / u) + c, -h1 * ct,
            l2 * ct / u, (m2 * l1 * u) - (l2 * (h1 + l2) * ct / u), (-l2 * l2 * ct / u) - c, -l2 * ct,
            0, 0, 1, 0,
        ];
    }

    /// <summary>The system matrix A = M⁻¹ D, rows of four; all NaN outside the domain.</summary>
    public static double[] System(LateralRig rig, double speed)
    {
        double[] result = new double[16];
        if (!rig.IsComputable || double.IsNaN(Positive(speed)))
        {
            Array.Fill(result, double.NaN);
            return result;
        }

        SmallMatrix.Solve(Inertia(rig), Forces(rig, speed), result, 4);
        return result;
    }

    /// <summary>How the state answers a steer angle, M⁻¹ B per rad.</summary>
    public static double[] Steering(LateralRig rig)
    {
        double[] result = new double[4];
        if (!rig.IsComputable)
            Array.Fill(result, double.NaN);
        else
            SmallMatrix.Solve(Inertia(rig), [rig.FrontStiffness, rig.ToFront * rig.FrontStiffness, 0, 0], result, 1);
        return result;
    }

    /// <summary>The four eigenvalues at a speed.</summary>
    public static LateralModes Modes(LateralRig rig, double speed)
    {
        double[] system = System(rig, speed);
        if (!Array.TrueForAll(system, double.IsFinite))
            return LateralModes.NotComputable;
        Matrix<double> matrix = Matrix<double>.Build.Dense(4, 4, (row, column) => system[(row * 4) + column]);
        try
        {
            return LateralModes.From([.. matrix.Evd().EigenValues]);
        }
        catch (NonConvergenceException)
        {
            // Numbers far from any vehicle's can keep the iteration from settling.
            return LateralModes.NotComputable;
        }
    }
}

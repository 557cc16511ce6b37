using System.Numerics;

namespace RigLang.Mechanics.Tests;

/// <summary>
/// The lateral model once more in road coordinates q = [y, vehicle yaw, trailer yaw]: <c>M q̈ + (C/u) q̇ + K q = 0</c>, each axle and mass a point with its own
/// direction vector. Another formulation to hold the state-space form against.
/// </summary>
internal static class RoadCoordinates
{
    /// <summary>|det(M λ² + C λ/u + K)| over the product of the row sizes: zero if λ is an eigenvalue of this formulation too.</summary>
    public static double Residue(LateralRig rig, double speed, Complex value)
    {
        double[] front = [1, rig.ToFront, 0], rear = [1, -rig.ToRear, 0], axle = [1, -rig.ToBall, -rig.TrailerAxle], centre = [1, -rig.ToBall, -rig.TrailerMassCentre];
        double[] turn = [0, -1, 1], vehicle = [0, 1, 0], trailer = [0, 0, 1], body = [1, 0, 0];
        var matrix = new Complex[9];
        Add(matrix, rig.VehicleMass * value * value, body, body);
        Add(matrix, rig.VehicleInertia * value * value, vehicle, vehicle);
        Add(matrix, rig.TrailerMass * value * value, centre, centre);
        Add(matrix, rig.TrailerInertia * value * value, trailer, trailer);
        Add(matrix, rig.HitchDamping * value, turn, turn);
        foreach ((double stiffness, double[] point, double[] heading) in ((double, double[], double[])[])
            [(rig.FrontStiffness, front, vehicle), (rig.RearStiffness, rear, vehicle), (rig.TrailerStiffness, axle, trailer)])
        {
            Add(matrix, stiffness / speed * value, point, point);
            Add(matrix, -stiffness, point, heading);
        }

        Complex determinant =
            (matrix[0] * ((matrix[4] * matrix[8]) - (matrix[5] * matrix[7]))) - (matrix[1] * ((matrix[3] * matrix[8]) - (matrix[5] * matrix[6])))
            + (matrix[2] * ((matrix[3] * matrix[7]) - (matrix[4] * matrix[6])));
        double size = 1;
        for (int row = 0; row < 3; row++)
            size *= matrix[row * 3].Magnitude + matrix[(row * 3) + 1].Magnitude + matrix[(row * 3) + 2].Magnitude;
        return determinant.Magnitude / size;
    }

    private static void Add(Complex[] matrix, Complex factor, double[] left, double[] right)
    {
        for (int i = 0; i < 9; i++)
            matrix[i] += factor * left[i / 3] * right[i % 3];
    }
}

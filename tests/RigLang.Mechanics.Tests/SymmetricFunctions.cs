using System.Numerics;

namespace RigLang.Mechanics.Tests;

/// <summary>The characteristic polynomial back from the eigenvalues.</summary>
internal static class SymmetricFunctions
{
    /// <summary>Characteristic polynomial by the eigenvalues' symmetric functions.</summary>
    public static (double P3, double P2, double P1, double P0) Polynomial(LateralRig rig, double speed)
    {
        Complex[] e = [.. SingleTrackModel.Modes(rig, speed).Eigenvalues];
        Complex p3 = 0, p2 = 0, p1 = 0;
        for (int i = 0; i < 4; i++)
        {
            p3 -= e[i];
            for (int j = i + 1; j < 4; j++)
            {
                p2 += e[i] * e[j];
                for (int k = j + 1; k < 4; k++)
                    p1 -= e[i] * e[j] * e[k];
            }
        }

        return (p3.Real, p2.Real, p1.Real, (e[0] * e[1] * e[2] * e[3]).Real);
    }
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Estimates of the cornering stiffness of an axle, N/rad. Expect ± 25 % without a tyre measurement.</summary>
public static class CorneringStiffness
{
    /// <summary>Stiffness over load of car tyres, 1/rad (10 to 14, value from memory).</summary>
    public const double CarTyre = 12;

    /// <summary>Of LT and ST tyres, 1/rad (6 to 9, value from memory).</summary>
    public const double TrailerTyre = 7.5;

    /// <summary>Of heavy vehicles' tyres, 1/rad. Source: OpenPBS parameter sets, Chalmers.</summary>
    public const double HeavyTyre = 5.5;

    /// <summary>Share of its rating at which a tyre is taken to have its coefficient (our choice).</summary>
    public const double NominalUse = 0.7;

    /// <summary>
    /// Stiffness of an axle under a load. It rises less than the load does and is largest at the rating: C = c · F · (2 − F/R)/(2 − 0.7).
    /// </summary>
    /// <param name="load">Axle load, N, zero or above.</param>
    /// <param name="rating">What its tyres are rated for, N, above zero.</param>
    /// <param name="coefficient">Stiffness over load at 0.7 of the rating, 1/rad.</param>
    /// <returns>NaN from twice the rating on.</returns>
    public static double OfAxle(double load, double rating, double coefficient)
    {
        double use = NotNegative(load) / Positive(rating);
        return Finite(Positive(coefficient) * load * Positive(2 - use) / (2 - NominalUse));
    }

    /// <summary>A measured or stated stiffness at one load carried over to another.</summary>
    /// <param name="stiffness">N/rad at <paramref name="load"/>.</param>
    /// <param name="load">N, above zero.</param>
    /// <param name="newLoad">N, zero or above.</param>
    /// <param name="rating">N, above zero.</param>
    public static double AtLoad(double stiffness, double load, double newLoad, double rating) =>
        Finite(Positive(stiffness) * OfAxle(newLoad, rating, 1) / Positive(OfAxle(Positive(load), rating, 1)));
}

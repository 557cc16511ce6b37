using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Tyre classes of the European label.</summary>
public enum LabelledTyre
{
    /// <summary>C1: cars and light trailers.</summary>
    Car,

    /// <summary>C2: vans.</summary>
    Van,
}

/// <summary>Rolling resistance by the letter on the European tyre label. Source: Regulation (EC) 1222/2009, table A4/1.</summary>
public static class TyreLabel
{
    private static readonly double[] Cars = [5.9, 7.1, 8.4, 9.8, 9.8, 11.3, 12.9], Vans = [4.9, 6.1, 7.4, 8.6, 8.6, 9.9, 11.2];

    /// <summary>Largest rolling coefficient that the letter allows, –; the letters D and E share one. A tyre has less, by up to a class. NaN for no letter from A to G.</summary>
    public static double RollingLimit(LabelledTyre tyre, char letter) =>
        letter is < 'A' or > 'G' ? double.NaN : tyre switch { LabelledTyre.Car => Finite(Cars[letter - 'A'] / 1000), LabelledTyre.Van => Vans[letter - 'A'] / 1000, _ => double.NaN };
}

using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Load index to mass per tyre, single fitment. Source: the table of ISO 4000-1, ETRTO and UN R30.</summary>
public static class LoadIndex
{
    public const int Lowest = 60;

    public const int Highest = 150;

    private static ReadOnlySpan<short> Kilograms =>
    [
        250, 257, 265, 272, 280, 290, 300, 307, 315, 325, // 60
        335, 345, 355, 365, 375, 387, 400, 412, 425, 437, // 70
        450, 462, 475, 487, 500, 515, 530, 545, 560, 580, // 80
        600, 615, 630, 650, 670, 690, 710, 730, 750, 775, // 90
        800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, // 100
        1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, // 110
        1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, // 120
        1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430, // 130
        2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250, // 140
        3350, // 150
    ];

    /// <summary>Rated mass per tyre, kg; NaN outside 60 to 150.</summary>
    public static double Mass(int index) => index is >= Lowest and <= Highest ? Kilograms[index - Lowest] : double.NaN;

    /// <summary>The least index whose rating is at least a mass (kg); null when none is or the mass is not known.</summary>
    public static int? Needed(double mass)
    {
        if (!(NotNegative(mass) <= Mass(Highest)))
            return null;
        int index = Lowest;
        while (Mass(index) < mass * (1 - 1e-9))
            index++;
        return index;
    }
}

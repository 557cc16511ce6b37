using System.Collections.Immutable;

namespace RigLang.Model.Facts;

/// <summary>Densities of what tanks hold, kg/m³ at about 15 °C. Common practice: water 1.00, petrol 0.745, diesel 0.835, autogas 0.54 kg/L.</summary>
public static class Fluids
{
    private static readonly (string Name, double Density)[] Table =
    [
        ("water", 1000),
        ("petrol", 745),
        ("diesel", 835),
        ("lpg", 540),
        ("e85", 780),
    ];

    public static ImmutableArray<string> Names { get; } = [.. Table.Select(row => row.Name)];

    /// <summary>kg/m³, or NaN for a fluid that isn't in the table.</summary>
    public static double Density(string fluid)
    {
        foreach (var (name, density) in Table)
        {
            if (name == fluid)
            {
                return density;
            }
        }

        return double.NaN;
    }
}

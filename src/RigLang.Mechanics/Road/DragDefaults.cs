using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Body of a tow vehicle.</summary>
public enum VehicleBody
{
    Saloon,
    Hatch,
    Estate,
    SportUtility,
    PeopleCarrier,
    Van,
    PickUp,
}

/// <summary>Body of a trailer.</summary>
public enum TrailerBody
{
    /// <summary>A box with sharp edges.</summary>
    Box,

    /// <summary>Rounded nose and edges.</summary>
    Rounded,
}

/// <summary>Estimates of drag where nothing was measured. A measured drag area comes before any of them.</summary>
public static class DragDefaults
{
    /// <summary>Drag coefficient of a car by its body. Source: defaults of the EU Joint Research Centre for Regulation (EU) 2017/1151.</summary>
    public static double Coefficient(VehicleBody body) => body switch
    {
        VehicleBody.Saloon => 0.27,
        VehicleBody.Hatch => 0.30,
        VehicleBody.Estate => 0.28,
        VehicleBody.SportUtility => 0.35,
        VehicleBody.PeopleCarrier => 0.30,
        VehicleBody.Van => 0.35,
        VehicleBody.PickUp => 0.40,
        _ => double.NaN,
    };

    /// <summary>
    /// Drag coefficient of a whole combination, on the <em>trailer's</em> frontal area: box 0.55 (0.5 to 0.6, after Hucho on caravans, value from memory),
    /// rounded 0.35 (one account of tunnel tests gives 0.31; weak).
    /// </summary>
    public static double CombinationCoefficient(TrailerBody body) => body switch
    {
        TrailerBody.Box => 0.55,
        TrailerBody.Rounded => 0.35,
        _ => double.NaN,
    };

    /// <summary>Frontal area, m²: 0.84 · width · height. Source: defaults of the EU Joint Research Centre for Regulation (EU) 2017/1151, for cars.</summary>
    public static double FrontalArea(double width, double height) => Finite(0.84 * Positive(width) * Positive(height));

    /// <summary>A roof box multiplies the drag area of a car by this. Source: as above.</summary>
    public const double RoofBoxFactor = 1.2;
}

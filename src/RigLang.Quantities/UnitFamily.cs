namespace RigLang.Quantities;

/// <summary>Tells apart units whose dimension is the same: N·m and J, N and Wh/km, m² and L/100km.</summary>
public enum UnitFamily
{
    Plain,
    Torque,
    Energy,
    EnergyPerDistance,
    FuelPerDistance,
}

namespace RigLang.Mechanics;

/// <summary>A tow vehicle as the hitch feels it.</summary>
/// <param name="Solo">Axle loads without the trailer, N.</param>
/// <param name="Wheelbase">m, above zero.</param>
/// <param name="Overhang">Rear axle to ball, m; negative for a coupling ahead of the rear axle.</param>
public readonly record struct TowGeometry(AxleLoads Solo, double Wheelbase, double Overhang);

namespace RigLang.Mechanics;

/// <summary>What the two axles of a tow vehicle stand with on the road.</summary>
/// <param name="Front">Front axle load, N.</param>
/// <param name="Rear">Rear axle load, N.</param>
public readonly record struct AxleLoads(double Front, double Rear)
{
    /// <summary>Both axles, N.</summary>
    public double Total => Front + Rear;

    public static AxleLoads operator +(AxleLoads one, AxleLoads other) => new(one.Front + other.Front, one.Rear + other.Rear);

    public static AxleLoads operator -(AxleLoads one, AxleLoads other) => new(one.Front - other.Front, one.Rear - other.Rear);

    public static AxleLoads Add(AxleLoads one, AxleLoads other) => one + other;

    public static AxleLoads Subtract(AxleLoads one, AxleLoads other) => one - other;
}

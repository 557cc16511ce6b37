namespace RigLang.Mechanics;

/// <summary>The whole rig standing coupled on level ground, in one state of its spring bars (slack: couple zero; set: above zero).</summary>
/// <param name="Front">Tow vehicle's front axle, N.</param>
/// <param name="Rear">Tow vehicle's rear axle, N.</param>
/// <param name="Ball">Net downward force of the trailer on the tow vehicle at the ball, N.</param>
/// <param name="TrailerAxles">The trailer's axle group, N.</param>
/// <param name="Couple">Couple of the spring bars, N·m, positive when it loads the front axle.</param>
public readonly record struct CoupledLoads(double Front, double Rear, double Ball, double TrailerAxles, double Couple)
{
    /// <summary>What the tow vehicle stands with on the road, tongue included, N.</summary>
    public double Vehicle => Front + Rear;

    /// <summary>The weight of the combination, N.</summary>
    public double Total => Front + Rear + TrailerAxles;
}

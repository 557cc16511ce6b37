using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>Forces of a receiver on the two lines where it is fastened to the vehicle, N, down positive.</summary>
/// <param name="Rear">At the rear line.</param>
/// <param name="Forward">At the forward line.</param>
/// <param name="Bending">Bending moment in the receiver at the rear line, N·m; positive as a weight-carrying hitch bends it.</param>
public readonly record struct ReceiverForces(double Rear, double Forward, double Bending);

/// <summary>
/// A receiver as a beam on two lines of fastening. The bending moment changes its sign when spring bars are set, and the forward line can then
/// carry more than the whole ball load; so look at the slack and the set state both. Static forces: a dynamic factor comes on top.
/// </summary>
public static class Receiver
{
    /// <param name="ball">Net downward force at the ball, N.</param>
    /// <param name="couple">Couple of spring bars, N·m.</param>
    /// <param name="toRear">Rear line ahead of the ball, m.</param>
    /// <param name="apart">Forward line ahead of the rear line, m, above zero.</param>
    /// <param name="pull">Rearward pull at the ball, N.</param>
    /// <param name="below">The pull's height below the lines, m.</param>
    public static ReceiverForces Forces(double ball, double couple, double toRear, double apart, double pull = 0, double below = 0)
    {
        double span = Positive(apart);
        double turning = couple + (pull * below);
        double rear = ((ball * (toRear + span)) - turning) / span;
        double forward = (turning - (ball * toRear)) / span;
        return new ReceiverForces(Finite(rear), Finite(forward), Finite((ball * toRear) - turning));
    }
}

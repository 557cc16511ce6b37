using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>
/// What a trailer does to the axles of its tow vehicle through a weight-carrying or a weight-distributing hitch. The bars of the latter put a
/// couple on the tow vehicle and its opposite on the trailer. Everything is linear in that couple, and the sum of all axle loads never changes.
/// Valid standing straight on level ground, friction in the head left out (in practice that blurs the couple by some 10 %).
/// </summary>
public static class Hitch
{
    /// <summary>All axle loads with the given couple; zero is a weight-carrying hitch, or slack bars.</summary>
    /// <param name="vehicle">Solo loads and geometry.</param>
    /// <param name="trailer">Mass, tongue and axle.</param>
    /// <param name="couple">N·m, positive when it loads the front axle.</param>
    public static CoupledLoads Couple(TowGeometry vehicle, TrailerLoad trailer, double couple = 0)
    {
        double wheelbase = Positive(vehicle.Wheelbase);
        double shift = couple / Positive(trailer.Axle);
        double ball = (Constants.Gravity * trailer.TongueMass) - shift;
        double front = vehicle.Solo.Front + ((couple - (ball * vehicle.Overhang)) / wheelbase);
        double rear = vehicle.Solo.Rear + (((ball * (wheelbase + vehicle.Overhang)) - couple) / wheelbase);
        return new CoupledLoads(Finite(front), Finite(rear), Finite(ball), Finite(trailer.AxleLoad + shift), Finite(couple));
    }

    /// <summary>The couple, N·m, that gives the front axle back a wanted share of what the slack trailer took from it.</summary>
    /// <param name="restoration">Front axle load restoration: 0 none, 1 all of it.</param>
    public static double CoupleForRestoration(TowGeometry vehicle, TrailerLoad trailer, double restoration)
    {
        double reach = trailer.Axle + vehicle.Overhang;
        return Finite(restoration * Constants.Gravity * trailer.TongueMass * vehicle.Overhang * Positive(trailer.Axle) / Positive(reach));
    }

    /// <summary>Front axle load restoration from the front axle's loads in three states, N. NaN when the slack trailer takes nothing from it.</summary>
    public static double Restoration(double soloFront, double slackFront, double setFront) => Finite((setFront - slackFront) / (soloFront - slackFront));

    /// <summary>The couple of spring bars, N·m.</summary>
    /// <param name="barForce">Lifting force at the end of one bar, N.</param>
    /// <param name="lever">That end behind the ball, m, above zero.</param>
    /// <param name="bars">Number of bars.</param>
    public static double CoupleFromBarForce(double barForce, double lever, int bars = 2) => Finite(bars * barForce * Positive(lever));

    /// <summary>Lifting force at the end of one bar, N, for a couple.</summary>
    public static double BarForce(double couple, double lever, int bars = 2) => Finite(couple / (bars * Positive(lever)));

    /// <summary>Force on the ball itself, N. It carries the net force and holds the bars down besides.</summary>
    public static double ForceOnBall(double netBall, double barForce, int bars = 2) => Finite(netBall + (bars * barForce));
}

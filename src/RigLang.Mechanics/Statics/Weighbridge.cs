using static RigLang.Mechanics.Domain;

namespace RigLang.Mechanics;

/// <summary>One passage of a coupled rig over a weighbridge, N; NaN for a scale that was not read.</summary>
/// <param name="Front">Front axle.</param>
/// <param name="Rear">Rear axle.</param>
/// <param name="Trailer">Trailer axle group.</param>
public readonly record struct CoupledPass(double Front, double Rear, double Trailer)
{
    public double Total => Front + Rear + Trailer;
}

/// <summary>What the passages say, each quantity by every way there is; the spread between the ways is the quality of the weighing.</summary>
/// <param name="BallFromFront">Ball force with slack bars, N, from what the front axle lost.</param>
/// <param name="BallFromRear">The same from what the rear axle gained.</param>
/// <param name="BallFromSum">The same from what the vehicle gained in all.</param>
/// <param name="CoupleFromFront">Couple of the set bars, N·m, from what came back to the front axle.</param>
/// <param name="CoupleFromRear">The same from what left the rear axle.</param>
/// <param name="CoupleFromTrailer">The same from what the trailer's axles took on.</param>
/// <param name="Restoration">Front axle load restoration, 0…1 and beyond.</param>
public readonly record struct WeighbridgeReading(
    double BallFromFront, double BallFromRear, double BallFromSum,
    double CoupleFromFront, double CoupleFromRear, double CoupleFromTrailer, double Restoration);

/// <summary>The statics backwards: from scale readings to ball force, couple and restoration.</summary>
public static class Weighbridge
{
    /// <param name="solo">The tow vehicle alone, N.</param>
    /// <param name="slack">Coupled, bars slack.</param>
    /// <param name="set">Coupled, bars set.</param>
    /// <param name="wheelbase">m, above zero.</param>
    /// <param name="overhang">Rear axle to ball, m.</param>
    /// <param name="axle">Coupling to (equivalent) trailer axle, m, above zero.</param>
    public static WeighbridgeReading Read(AxleLoads solo, CoupledPass slack, CoupledPass set, double wheelbase, double overhang, double axle)
    {
        double l = Positive(wheelbase), lt = Positive(axle);
        return new WeighbridgeReading(
            Finite((solo.Front - slack.Front) * l / overhang),
            Finite((slack.Rear - solo.Rear) * l / (l + overhang)),
            Finite(slack.Front + slack.Rear - solo.Total),
            Finite((set.Front - slack.Front) * l * lt / (lt + overhang)),
            Finite((slack.Rear - set.Rear) * l * lt / (lt + l + overhang)),
            Finite((set.Trailer - slack.Trailer) * lt),
            Hitch.Restoration(solo.Front, slack.Front, set.Front));
    }
}

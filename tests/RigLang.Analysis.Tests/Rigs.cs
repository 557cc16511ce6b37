namespace RigLang.Analysis.Tests;

/// <summary>Rigs that several tests look at.</summary>
internal static class Rigs
{
    /// <summary>Wheelbase 3.00, overhang 1.20, ball to axle 5.00 m; 1250 + 1150 kg solo; trailer 2500 kg with 300 kg on the tongue.</summary>
    public static string Plain(string rigLines) => $"""
        vehicle v
            wheelbase 3.00 m
            overhang 1.20 m
            ball-height 0.45 m
            gross-rating 3000 kg
            combined-rating 5500 kg
            towing-rating 3000 kg
            tongue-rating 350 kg
            mount rear at 0.30 m ahead of ball
            mount forward at 0.75 m ahead of ball
            axle front
                carries 1250 kg
                axle-rating 1400 kg
                ride-rate 52 N/mm
            axle rear
                carries 1150 kg
                axle-rating 1700 kg
                ride-rate 58 N/mm
            aboard nothing

        trailer t
            mass 2500 kg
            tongue 300 kg
            coupling-to-axle 5.00 m
            coupling-height 0.45 m
            gross-rating 2700 kg
            brakes electric
            axle only
                axle-rating 2600 kg
            aboard nothing

        hitch bars
            type weight-distributing
            towing-rating 3500 kg
            tongue-rating 400 kg
            mass 0 kg
            bar-length 0.75 m

        rig r
            vehicle v
            trailer t
            hitch bars
        {string.Join('\n', rigLines.Split('\n').Select(line => "    " + line.Trim()))}
        """;
}

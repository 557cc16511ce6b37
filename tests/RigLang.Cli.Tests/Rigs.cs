namespace RigLang.Cli.Tests;

/// <summary>Files that tests share.</summary>
internal static class Rigs
{
    /// <summary>A rig without fault.</summary>
    public const string Fine = """
        vehicle van "Van"
            wheelbase       3.00 m
            overhang        1.00 m
            gross-rating    3000 kg
            combined-rating 5000 kg
            towing-rating   2000 kg
            tongue-rating   100 kg
            axle front
                carries     1000 kg
                axle-rating 1400 kg
            axle rear
                carries     900 kg
                axle-rating 1500 kg
            aboard nothing

        trailer box "Box"
            mass            800 kg
            tongue          60 kg
            coupling-to-axle 3.00 m
            gross-rating    1000 kg
            brakes          overrun
            axle only
                axle-rating 1000 kg
            aboard nothing

        load nobody
            on vehicle
                item driver 80 kg at 1.50 m behind front-axle

        rig pair "Van and box"
            vehicle         van
            trailer         box
            load            nobody

        """;

    /// <summary>The same with an expectation that isn't met.</summary>
    public static string Missed => Fine.TrimEnd() + "\n    expect tongue-ratio < 5 %\n";
}

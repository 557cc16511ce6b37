namespace RigLang.Analysis.Checks.Weighings;

/// <summary>Whole small files around the weighings of the checks' examples.</summary>
internal static class WeighingExample
{
    private const string Rig = """
        vehicle van
            wheelbase 3 m
            overhang 1.2 m
            gross-rating 3000 kg
            axle front
                carries 1250 kg
                axle-rating 1350 kg
            axle rear
                carries 1150 kg
                axle-rating 1750 kg
            aboard nothing

        trailer box
            mass 1500 kg
            tongue 100 kg
            coupling-to-axle 5 m
            brakes overrun
            axle only
                axle-rating 1600 kg
            aboard nothing

        rig pair
            vehicle van
            trailer box


        """;

    /// <summary>A weighing of <c>rig pair</c>: a van of 1250 and 1150 kg, with 1350 and 1750 kg rated, and a box of 1500 kg with 100 kg on the tongue; nobody aboard.</summary>
    public static string Of(string weighing) => Rig + weighing;

    /// <summary>The same with 200 kg on the tongue and a hitch with spring bars of no mass.</summary>
    public static string WithBars(string weighing) => Of(weighing)
        .Replace("    tongue 100 kg", "    tongue 200 kg", StringComparison.Ordinal)
        .Replace("    trailer box\n", "    trailer box\n    hitch bars\n    restoration 50 %\n", StringComparison.Ordinal)
        .Replace("rig pair\n    vehicle", "hitch bars\n    type weight-distributing\n    mass 0 kg\n\nrig pair\n    vehicle", StringComparison.Ordinal);
}

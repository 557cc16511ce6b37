namespace RigLang.Analysis.Checks.Runs;

/// <summary>Whole small files around the runs of the checks' examples.</summary>
internal static class RunExample
{
    private const string Rig = """
        vehicle van
            mass 2400 kg
            rolling 0.010
            drag-area 0.8 m²
            aboard nothing
            electric
                usable-energy 80 kWh
                drive-efficiency 88 %
                regeneration 60 %
                regeneration-power 60 kW
                auxiliary 0.5 kW

        rig solo
            vehicle van
            speed 90 km/h


        """;

    /// <summary>A run behind an electric vehicle with 80 kWh and its rig <c>solo</c>; on a level calm road at 90 km/h it takes 18 kWh for 100 km.</summary>
    public static string Of(string run) => Rig + run;

    /// <summary>Two such drives of 100 km, at 90 and at 70 km/h, with what they used, kWh.</summary>
    public static string TwoRuns(string atNinety, string atSeventy) => $"""
        run brisk
            rig solo
            date 2026-09-12
            distance 100 km
            speed 90 km/h
            climb 0 m
            wind 0 km/h head
            air 15 °C
            used {atNinety} kWh

        run calm
            rig solo
            date 2026-09-13
            distance 100 km
            speed 70 km/h
            climb 0 m
            wind 0 km/h head
            air 15 °C
            used {atSeventy} kWh
        """;
}

namespace RigLang.Analysis.Checks.Trips;

/// <summary>Whole small files around the trips of the checks' examples.</summary>
internal static class TripExample
{
    private const string ElectricRig = """
        vehicle van
            mass 2400 kg
            rolling 0.010
            drag-area 0.8 m²
            aboard nothing
            electric
                usable-energy 80 kWh
                motor-power 150 kW
                ac-power 11 kW
                charge-point 10 % 120 kW
                charge-point 100 % 10 kW

        rig solo
            vehicle van
            speed 90 km/h


        """;

    private const string PetrolRig = """
        vehicle hatch
            mass 1300 kg
            rolling 0.010
            drag-area 0.7 m²
            tank fuel 40 L petrol at 2 m behind front-axle
            aboard nothing
            combustion
                fuel petrol
                engine-power 70 kW
                transmission manual

        rig solo
            vehicle hatch
            speed 90 km/h


        """;

    /// <summary>A trip behind an electric vehicle with 80 kWh and its rig <c>solo</c>.</summary>
    public static string Electric(string trip) => ElectricRig + trip;

    /// <summary>A trip behind a petrol vehicle with 40 litres and its rig <c>solo</c>.</summary>
    public static string Petrol(string trip) => PetrolRig + trip;
}

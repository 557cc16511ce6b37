namespace RigLang.Analysis.Tests.Power;

/// <summary>Rigs whose drives are told in full, by few lines. Tyres 235/55R19: 0.7411 m outside, rolling radius 3.05 · 0.7411 ÷ 2π = 0.35975 m.</summary>
internal static class PullingRig
{
    public const double Radius = 3.05 * ((19 * 0.0254) + (2 * 0.235 * 0.55)) / (2 * Math.PI);

    public const double Gravity = 9.80665;

    public const double Density = 1.225;

    private const string Electric = """
            electric
                usable-energy 80 kWh
                motor-power 150 kW
                motor-power-lasting 80 kW
                motor-torque 400 N·m
                motor-speed 16_000 rpm
                reduction 10
        """;

    public const string Diesel = """
            combustion
                fuel diesel
                aspiration turbo
                engine-power 120 kW
                torque-point 1000 rpm 250 N·m
                torque-point 1600 rpm 400 N·m
                torque-point 2600 rpm 400 N·m
                torque-point 4000 rpm 280 N·m
                driveline-efficiency 90 %
                gear 1 4.2
                gear 2 2.4
                gear 3 1.5
                gear 4 1.1
                gear 5 0.85
                gear 6 0.68
                final-drive 3.6
        """;

    /// <summary>Vehicle 2400 kg, mass centre 1.44 m behind the front axle and 0.70 m high; trailer 2500 kg with 300 kg on the ball: the rig of the reference figures for a start.</summary>
    public static string Of(string drive = "front", string block = Electric, string rig = "", string speed = "80 km/h", string rest = "") => $"""
        vehicle v
            wheelbase 3.00 m
            overhang 1.20 m
            ball-height 0.45 m
            cg-height 0.70 m
            drive {drive}
            mass 2400 kg
            front-share 52 %
            axle front
                tyres 235/55R19 105W XL
            axle rear
                tyres 235/55R19 105W XL
            aboard nothing
        {block}

        trailer t
            mass 2500 kg
            tongue 300 kg
            coupling-to-axle 5.00 m
            aboard nothing

        practice p
            assume friction 0.8

        rig r
            vehicle v
            trailer t
            practice p
            rolling 0.012
            drag-area 2.6 m²
            speed {speed}
        {rig}

        {rest}
        """;
}

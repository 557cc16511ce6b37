namespace RigLang.Analysis.Checks.Examples;

/// <summary>Small whole files that the checks' examples change a line of.</summary>
internal static class RigExample
{
    /// <summary>A van with a tow ball of its own and a trailer with overrun brakes, <c>rig pair</c>: nothing to object to.</summary>
    public const string Pair = """
        vehicle van
            wheelbase 3.00 m
            overhang 1.10 m
            gross-rating 2950 kg
            combined-rating 5000 kg
            towing-rating 2300 kg
            tongue-rating 230 kg
            axle front
                carries 1250 kg
                axle-rating 1400 kg
            axle rear
                carries 1150 kg
                axle-rating 1700 kg
            aboard nothing

        trailer box
            mass 1500 kg
            tongue 105 kg
            coupling-to-axle 5.00 m
            gross-rating 2000 kg
            brakes overrun
            stabiliser yes
            axle only
                axle-rating 1900 kg
            aboard nothing

        load us
            on vehicle
                item people 150 kg at 1.40 m behind front-axle
            on trailer
                item stores 100 kg at axle

        rig pair
            vehicle van
            trailer box
            load us
        """;

    /// <summary>A pick-up with a receiver, a hitch with spring bars and a travel trailer, <c>rig tour</c>: nothing to object to.</summary>
    public const string Bars = """
        vehicle pick-up
            wheelbase 145 in
            pin-overhang 48 in
            gross-rating 7200 lb
            combined-rating 16_000 lb
            towing-rating 9000 lb
            tongue-rating 900 lb
            axle front
                carries 3000 lb
                axle-rating 3600 lb
            axle rear
                carries 2300 lb
                axle-rating 4000 lb
            aboard nothing

        trailer travel
            mass 5500 lb
            tongue 680 lb
            coupling-to-axle 200 in
            gross-rating 7000 lb
            brakes electric
            axle pair
                count 2
                axle-rating 3500 lb
            aboard nothing

        hitch bars
            type weight-distributing
            towing-rating 10_000 lb
            tongue-rating 1000 lb
            reach 10 in
            mass 80 lb
            yaw-friction 300 lbf·ft

        load us
            on vehicle
                item people 350 lb at 64 in behind front-axle
            on trailer
                item stores 300 lb at axle

        rig tour
            vehicle pick-up
            trailer travel
            hitch bars
            load us
            restoration 50 %
        """;

    /// <summary>The pair with a practice.</summary>
    public static string Practised(string practice) => $"{Pair}\n    practice {practice}\n    speed 90 km/h";

    /// <summary>The pair under a law, at 80 km/h, its trailer braking by itself when it comes off.</summary>
    public static string Ruled(string rules) => Pair.With(("    stabiliser yes", "    stabiliser yes\n    breakaway yes")) + $"\n    rules {rules}\n    speed 80 km/h";

    /// <summary>A short van with a light tongue behind it, every figure of the swing written: it swings by itself from some 100 km/h.</summary>
    public static string Swinging(string tongue, string speed, string? friction = null) => $"""
        vehicle van
            wheelbase 2.70 m
            overhang 1.05 m
            yaw-inertia 2600 kg·m²
            axle front
                carries 890 kg
                cornering-stiffness 110 kN/rad
            axle rear
                carries 710 kg
                cornering-stiffness 150 kN/rad
            aboard nothing

        trailer box
            mass 1400 kg
            tongue {tongue}
            coupling-to-axle 4.00 m
            yaw-inertia 3600 kg·m²
            yaw-friction {friction ?? "none"}
            axle only
                cornering-stiffness 90 kN/rad
            aboard nothing

        rig pair
            vehicle van
            trailer box
            speed {speed}
        """;

    /// <summary>A front-driven electric van with all that its climbing and starting rest on, a trailer, and a trip over a hill of that grade.</summary>
    public static string Pulling(string grade) => $"""
        vehicle van
            wheelbase 3.00 m
            overhang 1.10 m
            ball-height 0.42 m
            cg-height 0.70 m
            drag-area 0.9 m²
            rolling 0.010
            drive front
            axle front
                carries 1150 kg
                tyres 235/55R19 105W XL
            axle rear
                carries 1250 kg
                tyres 235/55R19 105W XL
            aboard nothing
            electric
                usable-energy 80 kWh
                motor-power 150 kW
                motor-power-lasting 80 kW
                motor-torque 400 N·m
                motor-speed 16_000 rpm
                reduction 10

        trailer box
            mass 1900 kg
            tongue 140 kg
            coupling-to-axle 5.00 m
            drag-area 1.4 m²
            rolling 0.012
            brakes overrun
            breakaway yes
            stabiliser yes
            axle only
                axle-rating 2000 kg
            aboard nothing

        rig pair
            vehicle van
            trailer box
            speed 80 km/h

        trip out
            rig pair
            start home
            start-charge 90 %
            leg hill
                section 1 km at {grade} speed 30 km/h
        """;

    /// <summary>The example with other text in places of it.</summary>
    /// <exception cref="ArgumentException">The example has no such text.</exception>
    public static string With(this string example, params (string Text, string Instead)[] changes) =>
        changes.Aggregate(example, (text, change) => text.Contains(change.Text, StringComparison.Ordinal)
            ? text.Replace(change.Text, change.Instead, StringComparison.Ordinal)
            : throw new ArgumentException($"The example has no \"{change.Text}\"."));
}

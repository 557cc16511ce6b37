using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;

namespace RigLang.Analysis.Tests.Trips;

/// <summary>Rigs and trips that the trip tests look at, told by few lines.</summary>
internal static class Journey
{
    /// <summary>
    /// Vehicle 2400 kg and trailer 2500 kg, rolling 0.010, drag area 2.6 m², 80 kWh, drive 88 %, regeneration 65 %, 1.5 kW beside the drive: the train of the
    /// reference figures.
    /// </summary>
    public const string Electric = """
        vehicle v
            mass 2400 kg
            aboard nothing
            electric
                usable-energy 80 kWh
                motor-power 300 kW
                motor-power-lasting 250 kW
                drive-efficiency 88 %
                regeneration 65 %
                regeneration-power 500 kW
                auxiliary 1.5 kW
                charge-efficiency 100 %
                ac-power 11 kW
                charge-point 0 % 150 kW
                charge-point 50 % 150 kW
                charge-point 100 % 30 kW

        trailer t
            mass 2500 kg
            aboard nothing

        rig r
            vehicle v
            trailer t
            rolling 0.010
            drag-area 2.6 m²
            speed 90 km/h


        """;

    public const string Petrol = """
        vehicle v
            mass 1300 kg
            rolling 0.010
            drag-area 0.7 m²
            tank fuel 40 L petrol at 2 m behind front-axle
            aboard nothing
            combustion
                fuel petrol
                engine-power 70 kW
                driveline-efficiency 92 %
                consumption 5.4 L/100km
                consumption-speed 90 km/h

        rig r
            vehicle v
            speed 90 km/h


        """;

    /// <summary>Air of 1.2 kg/m³ at the sea.</summary>
    public const string ThinAir = "air 21.00313 °C";

    public static TripStudy Of(string rig, string lines, params (string Path, string Text)[] files) => Find(Study.Of(rig + Trip(lines), files));

    /// <summary>The only leg of a trip that starts full.</summary>
    public static LegSubject Leg(string legLines, string rig = Electric, params (string Path, string Text)[] files) =>
        Of(rig, $"start-charge 100 %\nstart-fuel 100 %\nleg a\n{Indented(legLines)}", files).Legs[0];

    public static string Trip(string lines) => $"trip p\n    rig r\n    start home\n{Indented(lines)}";

    public static TripStudy Find(WorkspaceAnalysis analysis, string name = "p") => analysis.Trip(analysis.Workspace.Find(Study.File, DeclarationKind.Trip, name)!)!;

    /// <summary>The kilowatt hours of a result in joules.</summary>
    public static double KilowattHours(this ISubject subject, string result) => subject.Value(result) / 3.6e6;

    private static string Indented(string lines) => string.Join('\n', lines.Split('\n').Select(line => "    " + line)) + "\n";
}

using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Syntax.Tree;
using TyreLengths = RigLang.Mechanics.TyreSize;

namespace RigLang.Analysis.Results.Power;

/// <summary>The wheels that pull: which, how large, what they hold.</summary>
internal static class DrivenWheels
{
    private const double Inch = 0.0254;

    /// <summary>Which axle is driven.</summary>
    public static Computation<RigStudy, DrivenAxle> Axle { get; } = new("driven axle", (read, rig) => read.Word(rig.Vehicle, VehicleFacts.Drive) switch
    {
        "front" => DrivenAxle.Front,
        "rear" => DrivenAxle.Rear,
        _ => DrivenAxle.All,
    });

    /// <summary>Rolling radius of the driven tyres by their size, m; the rear ones where nobody says which are driven.</summary>
    public static Computation<RigStudy, double> Radius { get; } = new("rolling radius of the driven wheels", (read, rig) =>
    {
        var key = read.WordIfKnown(rig.Vehicle, VehicleFacts.Drive) == "front" ? "front" : "rear";
        if (rig.VehicleAxles.FirstOrDefault(axle => axle.Axle.Key == key) is not { } driven)
        {
            read.Need(rig.Vehicle, VehicleFacts.Axle);
            return double.NaN;
        }

        return read.Line(driven.Axle, driven.Facts.Tyres)?.Value is TyreValue tyre && Diameter(tyre.Size) is var diameter && diameter > 0
            ? TyreLengths.RollingRadius(diameter)
            : double.NaN;
    });

    /// <summary>What the driven wheels hold on the level, N: friction times the load on them as driven. What the pull itself shifts between the axles isn't counted.</summary>
    public static Computation<RigStudy, double> Grip { get; } = new("grip of the driven wheels", (read, rig) =>
    {
        var loads = read.Get(LoadStates.AsDriven, rig);
        return Friction(read, rig) * read.Get(Axle, rig) switch { DrivenAxle.Front => loads.Front, DrivenAxle.Rear => loads.Rear, _ => loads.Front + loads.Rear };
    });

    /// <summary>Tyre on road. What is said of it, and what stands in, is about asphalt: on another surface it is worth less, and marked.</summary>
    public static double Friction(Reader read, RigStudy rig)
    {
        if (read.WordIfKnown(rig.Rig, RigFacts.Surface) is "gravel" or "grass")
        {
            read.StandIn(rig.Rig, RigFacts.Surface);
        }

        return read.Figure(FigureFacts.Friction);
    }

    private static double Diameter(Syntax.Tree.TyreSize size) =>
        size.DiameterInches is { } diameter ? diameter * Inch
        : size is { WidthMillimetres: { } width } ? TyreLengths.OuterDiameter(width / 1000, (size.AspectPercent / 100) ?? TyreLengths.DefaultAspect, size.RimInches * Inch)
        : double.NaN;
}

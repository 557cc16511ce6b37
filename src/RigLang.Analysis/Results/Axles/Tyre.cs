using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Syntax.Tree;
using TyreSize = RigLang.Syntax.Tree.TyreSize;

namespace RigLang.Analysis.Results.Axles;

/// <summary>What the sidewall of an axle's tyres says, as the rules that the rig names read it.</summary>
internal static class Tyre
{
    /// <summary>
    /// Whether the rig names the US rules and this is a passenger-car tyre on a trailer, truck or multipurpose vehicle, whose rating they divide by 1.10
    /// (49 CFR 571.110 S4.2.2.2).
    /// </summary>
    public static Computation<AxleSubject, bool> IsDerated { get; } = new("passenger-car tyre derated", (read, axle) =>
    {
        if (read.LineIfWritten(axle.Axle, axle.Facts.Tyres)?.Value is not TyreValue tyre || !TyreClasses.IsPassengerCar(ClassOf(tyre.Size))
            || read.WordIfKnown(axle.Rig.Rig, RigFacts.Rules) != "us")
        {
            return false;
        }

        if (axle.IsTrailer)
        {
            return true;
        }

        var body = read.WordIfKnown(axle.Rig.Vehicle, VehicleFacts.Body);
        if (body is null)
        {
            // Taken as a passenger car, whose tyres aren't derated; marked, since nobody said so.
            read.StandIn(axle.Rig.Vehicle, VehicleFacts.Body);
        }

        return body is "suv" or "mpv" or "van" or "pick-up";
    });

    /// <summary>Rated mass of one tyre, kg: by its load index, that for dual fitment where the axle has more than two, derated where the rules say so.</summary>
    public static Computation<AxleSubject, double> Rating { get; } = new("rating of one tyre", (read, axle) =>
    {
        if (read.Line(axle.Axle, axle.Facts.Tyres)?.Value is not TyreValue tyre)
        {
            return double.NaN;
        }

        var isDual = read.Quantity(axle.Axle, axle.Facts.Wheels) > 2;
        var index = isDual ? tyre.Service?.DualLoadIndex : tyre.Service?.LoadIndex;
        var rating = index is { } known ? LoadIndex.Mass(known) : double.NaN;
        if (double.IsNaN(rating))
        {
            // A size without its load index, or an index outside the table, carries nobody knows how much.
            read.Need(axle.Axle, axle.Facts.Tyres);
            return double.NaN;
        }

        return read.Get(IsDerated, axle) ? rating / TyreLoad.PassengerTyreDivisor : rating;
    });

    /// <summary>How far the rating falls with pressure.</summary>
    public static double Exponent(TyreSize size) => TyreClasses.PressureExponent(ClassOf(size));

    public static TyreClass ClassOf(TyreSize size) => (size.Prefix, size.Suffix) switch
    {
        ("P", _) => TyreClass.PMetric,
        ("ST", _) => TyreClass.SpecialTrailer,
        ("LT", _) or (_, "LT") => TyreClass.LightTruck,
        (_, "C") => TyreClass.Commercial,
        _ => TyreClass.Passenger,
    };

    /// <summary>Highest speed by the speed symbol, m/s; null without one that the table has.</summary>
    public static double? TopSpeed(TyreService? service) =>
        service?.SpeedSymbol is { } symbol && Enum.TryParse<SpeedSymbol>(symbol, out var known) && Enum.IsDefined(known) && SpeedSymbols.Speed(known) is var speed && double.IsFinite(speed)
            ? speed
            : null;
}

using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Road;

/// <summary>What holds the rig back: its mass, its rolling and its drag, each from the best that is known.</summary>
internal static class RoadLoads
{
    /// <summary>What an open trailer adds, as a share of its tow vehicle's own drag (our choice).</summary>
    private const double FlatShare = 0.1, OpenShare = 0.2, BoatShare = 0.3;

    /// <summary>What a surface adds to the rolling on asphalt: rolled gravel 0.02 against 0.01 (engineeringtoolbox.com), mown grass (our choice).</summary>
    private const double GravelAdds = 0.01, GrassAdds = 0.05;

    /// <summary>In place of the turning parts' share: at a steady speed they count for nothing, and whatever would count them comes out unknown.</summary>
    private const double Steady = double.NaN;

    /// <summary>
    /// The vehicle's own road load as its bench figures give it; null where none of them is written. No line says the mass of that test: the mass as weighed is
    /// taken for it.
    /// </summary>
    public static Computation<RigStudy, RoadLoad?> Bench { get; } = new("road load of the bench", (read, rig) =>
    {
        FactDeclaration[] figures = [VehicleFacts.RoadLoadConstant, VehicleFacts.RoadLoadLinear, VehicleFacts.RoadLoadSquare];
        return figures.All(figure => rig.Vehicle.Find(figure) is null)
            ? null
            : new DynamometerRoadLoad(
                read.Quantity(rig.Vehicle, figures[0]), read.Quantity(rig.Vehicle, figures[1]), read.Quantity(rig.Vehicle, figures[2])).ToRoadLoad(read.Get(TrainMass.VehicleAsWeighed, rig));
    });

    /// <summary>Drag area of the vehicle alone with nothing on its roof, m².</summary>
    public static Computation<RigStudy, double> BareDrag { get; } = new("drag area of the bare vehicle", (read, rig) =>
        read.Get(Bench, rig)?.DragArea ?? read.Quantity(rig.Vehicle, VehicleFacts.DragArea));

    /// <summary>Drag area of the vehicle alone, m², with what stands on its roof.</summary>
    public static Computation<RigStudy, double> VehicleDrag { get; } = new("drag area of the vehicle", (read, rig) =>
    {
        var own = read.Get(BareDrag, rig);
        return read.Get(Cargo.OnRoof, rig) > 0 ? own * DragDefaults.RoofBoxFactor : own;
    });

    /// <summary>Drag area of the whole, m²: what the rig says of it, else the parts.</summary>
    public static Computation<RigStudy, double> Drag { get; } = new("drag area of the combination", (read, rig) =>
    {
        if (read.QuantityIfKnown(rig.Rig, RigFacts.DragArea) is { } measured)
        {
            return measured;
        }

        var vehicle = read.Get(VehicleDrag, rig);
        if (!rig.HasTrailer)
        {
            return vehicle;
        }

        // How vehicle and trailer share the air is known of no train that wasn't measured.
        read.StandIn(rig.Rig, RigFacts.DragArea);
        return WithTrailer(read, rig, vehicle);
    });

    /// <summary>Rolling of the vehicle alone, as a function of speed.</summary>
    public static Computation<RigStudy, Rolling> VehicleRolling { get; } = new("rolling of the vehicle", (read, rig) =>
        !read.IsWritten(rig.Vehicle, VehicleFacts.Rolling) && read.Get(Bench, rig) is { } bench ? bench.Rolling : OfPart(read, rig.Vehicle, VehicleFacts.Rolling, rig.VehicleAxles));

    /// <summary>Rolling of the whole on the rig's surface.</summary>
    public static Computation<RigStudy, Rolling> Rolling { get; } = new("rolling of the combination", (read, rig) => On(read, rig, read.WordIfKnown(rig.Rig, RigFacts.Surface)));

    /// <summary>Rolling of the whole on a surface; null is asphalt. What another surface adds is an estimate, and marked.</summary>
    public static Rolling On(Reader read, RigStudy rig, string? surface)
    {
        var asphalt = read.Get(OnAsphalt, rig);
        if (surface is not ("gravel" or "grass"))
        {
            return asphalt;
        }

        read.StandIn(rig.Rig, RigFacts.Rolling);
        return asphalt with { Constant = asphalt.Constant + Adds(surface) };
    }

    /// <summary>What a surface adds to the rolling coefficient; null is asphalt.</summary>
    public static double Adds(string? surface) => surface switch
    {
        "gravel" => GravelAdds,
        "grass" => GrassAdds,
        _ => 0,
    };

    /// <summary>Rolling of the whole on asphalt: what the rig says of it, else that of the parts by their masses.</summary>
    public static Computation<RigStudy, Rolling> OnAsphalt { get; } = new("rolling of the combination on asphalt", (read, rig) =>
    {
        if (read.QuantityIfKnown(rig.Rig, RigFacts.Rolling) is { } measured)
        {
            return new Rolling(measured);
        }

        var vehicle = read.Get(VehicleRolling, rig);
        if (!rig.HasTrailer)
        {
            return vehicle;
        }

        var trailer = OfPart(read, rig.Trailer, TrailerFacts.Rolling, rig.TrailerAxles);
        return Mechanics.Rolling.Mean(vehicle, read.Get(TrainMass.VehicleLoaded, rig), trailer, read.Get(TrainMass.TrailerLoaded, rig));
    });

    /// <summary>The combination's road load on its usual surface.</summary>
    public static Computation<RigStudy, RoadLoad> Whole { get; } = new("road load of the combination", (read, rig) =>
        new RoadLoad(read.Get(TrainMass.Whole, rig), read.Get(Rolling, rig), read.Get(Drag, rig), Steady));

    /// <summary>The vehicle's road load alone and as weighed: what a stated consumption is about.</summary>
    public static Computation<RigStudy, RoadLoad> Solo { get; } = new("road load of the vehicle alone", (read, rig) =>
        new RoadLoad(read.Get(TrainMass.VehicleAsWeighed, rig), read.Get(VehicleRolling, rig), read.Get(BareDrag, rig), Steady));

    private static double WithTrailer(Reader read, RigStudy rig, double vehicle)
    {
        if (read.QuantityIfKnown(rig.Trailer, TrailerFacts.DragArea) is { } added)
        {
            return vehicle + added;
        }

        if (read.QuantityIfKnown(rig.Trailer, TrailerFacts.DragCoefficient) is { } coefficient)
        {
            return vehicle + (coefficient * read.Quantity(rig.Trailer, TrailerFacts.FrontalArea));
        }

        read.StandIn(rig.Trailer, TrailerFacts.DragArea);
        var bare = read.Get(BareDrag, rig);
        return read.Word(rig.Trailer, TrailerFacts.Body) switch
        {
            "box" => Behind(TrailerBody.Box),
            "rounded" => Behind(TrailerBody.Rounded),
            "open" => vehicle + (OpenShare * bare),
            "boat" => vehicle + (BoatShare * bare),
            "flat" => vehicle + (FlatShare * bare),
            _ => double.NaN,
        };

        // The air meets one long body; a trailer that stands in the wake still adds no less than a flat one.
        double Behind(TrailerBody body) =>
            Math.Max(vehicle + (FlatShare * bare), DragDefaults.CombinationCoefficient(body) * read.Quantity(rig.Trailer, TrailerFacts.FrontalArea));
    }

    /// <summary>As written; else from the mean of the axles' pressures.</summary>
    private static Rolling OfPart(Reader read, Block part, FactDeclaration fact, IReadOnlyCollection<AxleSubject> axles)
    {
        if (read.QuantityIfKnown(part, fact) is { } written)
        {
            return new Rolling(written);
        }

        if (axles.Count == 0)
        {
            read.Need(part, fact);
            return default;
        }

        read.StandIn(part, fact);
        return Mechanics.Rolling.FromPressure(axles.Average(axle => read.Quantity(axle.Axle, axle.Facts.Pressure)));
    }
}

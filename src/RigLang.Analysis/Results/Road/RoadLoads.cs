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
    /// <summary>Everything that rolls, kg. Doesn't depend on how bars are set.</summary>
    public static Computation<RigStudy, double> Mass { get; } = new("rolling mass", (read, rig) =>
        (read.Get(LoadStates.Solo, rig).Total / Constants.Gravity) + (rig.HasTrailer ? read.Get(LoadStates.Trailer, rig).Mass : 0));

    /// <summary>The vehicle's own road load as its bench figures give it; null where they aren't all written.</summary>
    public static Computation<RigStudy, RoadLoad?> Bench { get; } = new("road load of the bench", (read, rig) =>
    {
        if (read.QuantityIfKnown(rig.Vehicle, VehicleFacts.RoadLoadConstant) is not { } constant
            || read.QuantityIfKnown(rig.Vehicle, VehicleFacts.RoadLoadLinear) is not { } linear
            || read.QuantityIfKnown(rig.Vehicle, VehicleFacts.RoadLoadSquare) is not { } square)
        {
            return null;
        }

        return new DynamometerRoadLoad(constant, linear, square).ToRoadLoad(read.Get(LoadStates.Weighed, rig).Total / Constants.Gravity);
    });

    /// <summary>Drag area of the vehicle alone, m², with what stands on its roof.</summary>
    public static Computation<RigStudy, double> VehicleDrag { get; } = new("drag area of the vehicle", (read, rig) =>
    {
        var own = read.Get(Bench, rig)?.DragArea ?? read.Quantity(rig.Vehicle, VehicleFacts.DragArea);
        return read.Get(Cargo.OnRoof, rig) > 0 ? own * DragDefaults.RoofBoxFactor : own;
    });

    /// <summary>Drag area of the whole, m².</summary>
    public static Computation<RigStudy, double> Drag { get; } = new("drag area of the combination", (read, rig) =>
    {
        if (rig.HasTrailer && read.QuantityIfKnown(rig.Rig, RigFacts.DragArea) is { } measured)
        {
            return measured;
        }

        var vehicle = read.Get(VehicleDrag, rig);
        return rig.HasTrailer ? WithTrailer(read, rig, vehicle) : vehicle;
    });

    /// <summary>Rolling of the vehicle alone, as a function of speed.</summary>
    public static Computation<RigStudy, Rolling> VehicleRolling { get; } = new("rolling of the vehicle", (read, rig) =>
        read.Get(Bench, rig)?.Rolling ?? OfPart(read, rig.Vehicle, VehicleFacts.Rolling, rig.VehicleAxles));

    /// <summary>Rolling of the whole on the rig's surface.</summary>
    public static Computation<RigStudy, Rolling> Rolling { get; } = new("rolling of the combination", (read, rig) => On(read, rig, read.WordIfKnown(rig.Rig, RigFacts.Surface)));

    /// <summary>Rolling of the whole on a surface.</summary>
    public static Rolling On(Reader read, RigStudy rig, string? surface)
    {
        switch (surface)
        {
            case "gravel":
                return Mechanics.Rolling.Gravel;
            case "grass":
                // Our choice: three times gravel; nobody drives far on it.
                return new Rolling(0.06);
        }

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
        return Mechanics.Rolling.Mean(vehicle, read.Get(LoadStates.Solo, rig).Total, trailer, Constants.Gravity * read.Get(LoadStates.Trailer, rig).Mass);
    }

    /// <summary>The combination's road load on its usual surface.</summary>
    public static Computation<RigStudy, RoadLoad> Whole { get; } = new("road load of the combination", (read, rig) =>
        new RoadLoad(read.Get(Mass, rig), read.Get(Rolling, rig), read.Get(Drag, rig), read.Quantity(rig.Vehicle, VehicleFacts.RotatingMass)));

    /// <summary>The vehicle's road load alone and as weighed: what a stated consumption is about.</summary>
    public static Computation<RigStudy, RoadLoad> Solo { get; } = new("road load of the vehicle alone", (read, rig) =>
        new RoadLoad(read.Get(LoadStates.Weighed, rig).Total / Constants.Gravity, read.Get(VehicleRolling, rig), read.Get(Bench, rig)?.DragArea ?? read.Quantity(rig.Vehicle, VehicleFacts.DragArea), read.Quantity(rig.Vehicle, VehicleFacts.RotatingMass)));

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

        TrailerBody? body = read.WordIfKnown(rig.Trailer, TrailerFacts.Body) switch { "box" => TrailerBody.Box, "rounded" => TrailerBody.Rounded, _ => null };
        if (body is null)
        {
            // No honest estimate for what is neither a box nor rounded.
            return read.Quantity(rig.Trailer, TrailerFacts.DragArea);
        }

        read.StandIn(rig.Trailer, TrailerFacts.DragArea);
        return Math.Max(vehicle, DragDefaults.CombinationCoefficient(body.Value) * read.Quantity(rig.Trailer, TrailerFacts.FrontalArea));
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

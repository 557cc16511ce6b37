using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Road;

/// <summary>
/// Masses for the road load, kg. They are sums alone: unlike the axle loads they need no lengths, so a trip can be reckoned for a rig of which only the
/// masses are known.
/// </summary>
internal static class TrainMass
{
    /// <summary>The vehicle as under aboard.</summary>
    public static Computation<RigStudy, double> VehicleAsWeighed { get; } = new("mass of the vehicle as weighed", (read, rig) =>
    {
        double carried = 0;
        var isCarried = rig.VehicleAxles.Length == 2;
        foreach (var axle in rig.VehicleAxles)
        {
            isCarried &= read.IsWritten(axle.Axle, AxleFacts.Vehicle.Carries!);
        }

        if (!isCarried && read.IsWritten(rig.Vehicle, VehicleFacts.Mass))
        {
            return read.Quantity(rig.Vehicle, VehicleFacts.Mass);
        }

        foreach (var axle in rig.VehicleAxles)
        {
            carried += read.Quantity(axle.Axle, AxleFacts.Vehicle.Carries!);
        }

        return isCarried ? carried : read.Quantity(rig.Vehicle, VehicleFacts.Mass);
    });

    /// <summary>The vehicle as loaded, with the hitch's head, uncoupled.</summary>
    public static Computation<RigStudy, double> VehicleLoaded { get; } = new("mass of the loaded vehicle", (read, rig) =>
        read.Get(VehicleAsWeighed, rig) + read.Get(Cargo.OnVehicle, rig).Sum(item => item.Mass) + (rig.HasHitch ? read.Quantity(rig.Hitch, HitchFacts.Mass) : 0));

    /// <summary>The trailer as loaded, uncoupled.</summary>
    public static Computation<RigStudy, double> TrailerLoaded { get; } = new("mass of the loaded trailer", (read, rig) =>
        read.Quantity(rig.Trailer, TrailerFacts.Mass) + read.Get(Cargo.OnTrailer, rig).Sum(item => item.Mass));

    /// <summary>Everything that rolls.</summary>
    public static Computation<RigStudy, double> Whole { get; } = new("mass of vehicle and trailer", (read, rig) =>
        read.Get(VehicleLoaded, rig) + (rig.HasTrailer ? read.Get(TrailerLoaded, rig) : 0));
}

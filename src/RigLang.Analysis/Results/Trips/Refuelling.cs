using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>Refuelling at a stop.</summary>
internal static class Refuelling
{
    /// <summary>m³ into the tank; a tank that ran dry is filled from empty.</summary>
    public static Computation<StopSubject, double> Volume { get; } = new("fuel taken", (read, stop) =>
        Drives.Engine(stop.Trip.Rig) is null || read.LineIfWritten(stop.Block, StopFacts.RefuelTo) is null
            ? read.NotApplicable()
            : (read.Get(Charge.AfterStop, stop) - Math.Max(0, read.Get(Charge.AtEnd, stop.Leg))) * read.Get(Drives.TankVolume, stop.Trip.Rig));
}

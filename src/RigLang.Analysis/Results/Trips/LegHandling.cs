using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>How the rig keeps straight on a leg.</summary>
public static class LegHandling
{
    public static ResultSet<LegSubject> Set { get; } = new(ResultScope.Leg);

    public static ResultDeclaration<LegSubject> FastestSpeed { get; } = Set.Add(
        "fastest-speed", QuantityKinds.Speed, "Fastest on the leg", "the highest speed that the leg asks for anywhere",
        "the lower of speed (of the leg or a section) and speed-limit", "definition",
        (read, leg) => read.Get(Driving.Fastest, leg));

    public static ResultDeclaration<LegSubject> Damping { get; } = Set.Add(
        "leg-damping", QuantityKinds.Number, "Damping of a swing", "how fast a swing dies away at the leg's highest speed: 0.10 and more is good, below 0 it grows by itself (common practice, value from memory). A friction head is counted at one degree of swing",
        "−Re λ ÷ |λ| of the least damped swing at fastest-speed", StabilityResults.Model,
        (read, leg) => SwingModel.Damping(read, leg.Trip.Rig, read.Get(FastestSpeed, leg)));
}

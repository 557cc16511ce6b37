using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Loads;

/// <summary>The lengths that everything else rests on, from whichever facts give them.</summary>
internal static class Geometry
{
    /// <summary>Rear axle to ball, m: the vehicle's own ball, or the receiver's pin plus the hitch's reach.</summary>
    public static Computation<RigStudy, double> Overhang { get; } = new("overhang of the ball", (read, rig) =>
        UsesReceiver(read, rig)
            ? read.Quantity(rig.Vehicle, VehicleFacts.PinOverhang) + read.Quantity(rig.Hitch, HitchFacts.Reach)
            : read.Quantity(rig.Vehicle, VehicleFacts.Overhang));

    /// <summary>Road to ball, m, in the weighed state: the vehicle's own ball, or the tube less drop or plus rise.</summary>
    public static Computation<RigStudy, double> BallHeight { get; } = new("height of the ball, as weighed", (read, rig) =>
    {
        if (!UsesReceiver(read, rig))
        {
            return read.Quantity(rig.Vehicle, VehicleFacts.BallHeight);
        }

        var rise = read.QuantityIfKnown(rig.Hitch, HitchFacts.Rise);
        return read.Quantity(rig.Vehicle, VehicleFacts.ReceiverHeight) + (rise ?? -read.Quantity(rig.Hitch, HitchFacts.Drop));
    });

    /// <summary>Ball to the middle of all axles, m: as written, or the mean of the axles.</summary>
    public static Computation<RigStudy, double> CouplingToAxle { get; } = new("coupling to the middle of the axles", (read, rig) =>
    {
        if (read.QuantityIfKnown(rig.Trailer, TrailerFacts.CouplingToAxle) is { } written)
        {
            return written;
        }

        if (rig.TrailerAxles.IsEmpty || rig.TrailerAxles.All(axle => !read.IsWritten(axle.Axle, axle.Facts.BehindCoupling!)))
        {
            return read.Quantity(rig.Trailer, TrailerFacts.CouplingToAxle);
        }

        double sum = 0, count = 0;
        foreach (var axle in rig.TrailerAxles)
        {
            var equal = read.Quantity(axle.Axle, axle.Facts.EqualAxles!);
            sum += equal * read.Quantity(axle.Axle, axle.Facts.BehindCoupling!);
            count += equal;
        }

        return sum / count;
    });

    /// <summary>Ball to one axle (or to the middle of equal ones), m.</summary>
    public static Computation<AxleSubject, double> AxleBehindCoupling { get; } = new("axle behind the coupling", (read, axle) =>
        read.QuantityIfKnown(axle.Axle, axle.Facts.BehindCoupling!)
        ?? (axle.Rig.TrailerAxles.Length == 1 ? read.Get(CouplingToAxle, axle.Rig) : read.Quantity(axle.Axle, axle.Facts.BehindCoupling!)));

    /// <summary>Whether several axles share by their springs; equalised, marked as a stand-in, where nothing is said.</summary>
    public static Computation<RigStudy, bool> IsIndependent { get; } = new("suspension", (read, rig) =>
    {
        if (rig.TrailerAxles.Length < 2)
        {
            return false;
        }

        var suspension = read.WordIfKnown(rig.Trailer, TrailerFacts.Suspension);
        if (suspension is null)
        {
            read.StandIn(rig.Trailer, TrailerFacts.Suspension);
        }

        return suspension == "independent";
    });

    /// <summary>How the trailer's axles stand, with their spring rates: NaN where the rates don't matter.</summary>
    public static Computation<RigStudy, IReadOnlyList<SprungAxle>> TrailerAxles { get; } = new("trailer axles", (read, rig) =>
    {
        var isIndependent = read.Get(IsIndependent, rig);
        var axles = new List<SprungAxle>();
        // Equal springs share as springs of any other equal rate do; one rate says nothing beside an unknown one.
        var unknown = isIndependent ? rig.TrailerAxles.FirstOrDefault(axle => read.QuantityIfKnown(axle.Axle, axle.Facts.RideRate) is null) : null;
        if (unknown is not null)
        {
            read.StandIn(unknown.Axle, unknown.Facts.RideRate);
        }

        foreach (var axle in rig.TrailerAxles)
        {
            var rate = isIndependent && unknown is null ? read.Quantity(axle.Axle, axle.Facts.RideRate) : 1;
            var middle = read.Get(AxleBehindCoupling, axle);
            var count = (int)Math.Clamp(read.Quantity(axle.Axle, axle.Facts.EqualAxles!), 1, 9);
            var spacing = count > 1 ? read.QuantityIfKnown(axle.Axle, axle.Facts.Spacing!) ?? 0 : 0;
            for (var index = 0; index < count; index++)
            {
                axles.Add(new SprungAxle(middle + ((index - ((count - 1) / 2.0)) * spacing), rate));
            }
        }

        return axles;
    });

    /// <summary>Ball to the one axle that would carry as the group does, m.</summary>
    public static Computation<RigStudy, double> EquivalentAxle { get; } = new("coupling to the equivalent axle", (read, rig) =>
        read.Get(IsIndependent, rig)
            ? AxleGroup.EquivalentOfIndependent(read.Get(TrailerAxles, rig).ToArray())
            : read.Get(CouplingToAxle, rig));

    /// <summary>Whether the ball sits in a receiver; a vehicle that says neither is asked for its own ball.</summary>
    public static bool UsesReceiver(Reader read, RigStudy rig) =>
        rig.HasHitch && !read.IsWritten(rig.Vehicle, VehicleFacts.Overhang) && read.IsWritten(rig.Vehicle, VehicleFacts.PinOverhang);
}

using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Stability;

/// <summary>The rig as the linear model of its sideways motion reads it: masses and inertias as loaded, tyres under their loads as driven.</summary>
internal static class SwingModel
{
    /// <summary>Swing at which a friction head's torque is counted as damping: one degree either way (our choice). It damps smaller swings more, larger ones less.</summary>
    public const double Amplitude = Math.PI / 180;

    /// <summary>Without the friction of a head, which depends on speed and swing.</summary>
    public static Computation<RigStudy, LateralRig?> Frictionless { get; } = new("rig seen from above", (read, rig) =>
    {
        if (!rig.HasTrailer)
        {
            read.NotApplicable();
            return null;
        }

        var solo = read.Get(LoadStates.Solo, rig);
        var wheelbase = read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase);
        var toFront = VehicleStatics.MassCentre(solo, wheelbase);
        var trailer = read.Get(LoadStates.Trailer, rig);
        return new LateralRig
        {
            VehicleMass = solo.Total / Constants.Gravity,
            VehicleInertia = read.Quantity(rig.Vehicle, VehicleFacts.YawInertia),
            ToFront = toFront,
            ToRear = wheelbase - toFront,
            ToBall = wheelbase - toFront + read.Get(Geometry.Overhang, rig),
            TrailerMass = trailer.Mass,
            TrailerInertia = TrailerInertia(read, rig, trailer),
            TrailerMassCentre = trailer.MassCentre,
            TrailerAxle = trailer.Axle,
            FrontStiffness = Stiffness(read, rig, rig.VehicleAxles.Where(axle => axle.Axle.Key == "front")),
            RearStiffness = Stiffness(read, rig, rig.VehicleAxles.Where(axle => axle.Axle.Key == "rear")),
            TrailerStiffness = Stiffness(read, rig, rig.TrailerAxles),
            HitchDamping = rig.HasHitch ? read.QuantityIfKnown(rig.Hitch, HitchFacts.YawDamping) ?? 0 : 0,
        };
    });

    /// <summary>Friction moment at the ball, N·m, of the hitch and the coupling head together; none where nothing is said.</summary>
    public static Computation<RigStudy, double> Friction { get; } = new("friction at the ball", (read, rig) =>
        (rig.HasHitch ? read.QuantityIfKnown(rig.Hitch, HitchFacts.YawFriction) ?? 0 : 0) + (read.QuantityIfKnown(rig.Trailer, TrailerFacts.YawFriction) ?? 0));

    /// <summary>The trailer's own, and what its cargo adds by lying away from the mass centre.</summary>
    private static double TrailerInertia(Reader read, RigStudy rig, TrailerLoad trailer)
    {
        var own = read.Quantity(rig.Trailer, TrailerFacts.YawInertia);
        return own + read.Get(Cargo.OnTrailer, rig).Sum(item => item.Mass * (item.Position - trailer.MassCentre) * (item.Position - trailer.MassCentre));
    }

    private static double Stiffness(Reader read, RigStudy rig, IEnumerable<AxleSubject> axles)
    {
        double sum = 0;
        foreach (var axle in axles)
        {
            var count = axle.Facts.EqualAxles is { } equal ? read.Quantity(axle.Axle, equal) : 1;
            sum += count * OfOne(read, axle);
        }

        return axles.Any() ? sum : Missing(read, rig);
    }

    private static double Missing(Reader read, RigStudy rig)
    {
        read.Need(rig.Vehicle, VehicleFacts.Axle);
        return double.NaN;
    }

    /// <summary>As written; else from the tyre's class and its load as driven, rising less than the load does; else the plain estimate.</summary>
    private static double OfOne(Reader read, AxleSubject axle)
    {
        if (axle.Axle.Find(axle.Facts.CorneringStiffness)?.Value is MeasureValue || read.LineIfWritten(axle.Axle, axle.Facts.Tyres)?.Value is not TyreValue { Service: { } service } tyre)
        {
            return read.Quantity(axle.Axle, axle.Facts.CorneringStiffness);
        }

        read.StandIn(axle.Axle, axle.Facts.CorneringStiffness);
        var coefficient = tyre.Size.Prefix is "ST" or "LT" || tyre.Size.Suffix == "LT" ? CorneringStiffness.TrailerTyre : CorneringStiffness.CarTyre;
        var rating = LoadIndex.Mass(service.LoadIndex) * read.Quantity(axle.Axle, axle.Facts.Wheels) * Constants.Gravity;
        return CorneringStiffness.OfAxle(read.Get(Axles.AxleResults.Load, axle) * Constants.Gravity, rating, coefficient);
    }
}

using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Stability;

/// <summary>A moment of inertia and how far off it may be, kg·m².</summary>
internal readonly record struct Inertia(double Value, double HalfWidth);

/// <summary>The rig as the linear model of its sideways motion reads it: masses and inertias as loaded, tyres under their loads as driven.</summary>
internal static class SwingModel
{
    /// <summary>Swing at which a friction head's torque is counted as damping: one degree either way (our choice). It damps smaller swings more, larger ones less.</summary>
    public const double Amplitude = Math.PI / 180;

    /// <summary>Yaw inertia of the loaded vehicle: its own, and what people, cargo and hitch add by lying away from the mass centre.</summary>
    public static Computation<RigStudy, Inertia> VehicleInertia { get; } = new("yaw inertia of the loaded vehicle", (read, rig) =>
    {
        var (own, halfWidth) = read.Uncertain(rig.Vehicle, VehicleFacts.YawInertia);
        var wheelbase = read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase);
        var weighed = read.Get(LoadStates.Weighed, rig);
        var body = new PointMass(weighed.Total / Constants.Gravity, VehicleStatics.MassCentre(weighed, wheelbase));
        List<PointMass> items = [.. read.Get(Cargo.OnVehicle, rig)];
        if (rig.HasHitch)
        {
            items.Add(new PointMass(read.Quantity(rig.Hitch, HitchFacts.Mass), wheelbase + read.Get(Geometry.Overhang, rig)));
        }

        return new Inertia(YawInertia.With(own, body, items.ToArray()), halfWidth);
    });

    /// <summary>The same of the trailer.</summary>
    public static Computation<RigStudy, Inertia> TrailerInertia { get; } = new("yaw inertia of the loaded trailer", (read, rig) =>
    {
        var (own, halfWidth) = read.Uncertain(rig.Trailer, TrailerFacts.YawInertia);
        var mass = read.Quantity(rig.Trailer, TrailerFacts.Mass);
        var body = new PointMass(mass, TrailerStatics.MassCentre(mass, read.Quantity(rig.Trailer, TrailerFacts.Tongue), read.Get(Geometry.EquivalentAxle, rig)));
        return new Inertia(YawInertia.With(own, body, read.Get(Cargo.OnTrailer, rig).ToArray()), halfWidth);
    });

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
            VehicleInertia = read.Get(VehicleInertia, rig).Value,
            ToFront = toFront,
            ToRear = wheelbase - toFront,
            ToBall = wheelbase - toFront + read.Get(Geometry.Overhang, rig),
            TrailerMass = trailer.Mass,
            TrailerInertia = read.Get(TrailerInertia, rig).Value,
            TrailerMassCentre = trailer.MassCentre,
            TrailerAxle = trailer.Axle,
            FrontStiffness = read.Get(AxleStiffness.Front, rig).Value,
            RearStiffness = read.Get(AxleStiffness.Rear, rig).Value,
            TrailerStiffness = read.Get(AxleStiffness.Trailer, rig).Value,
            HitchDamping = rig.HasHitch ? read.QuantityIfKnown(rig.Hitch, HitchFacts.YawDamping) ?? 0 : 0,
        };
    });

    /// <summary>Friction moment at the ball, N·m, of the hitch and the coupling head together; none where nothing is said.</summary>
    public static Computation<RigStudy, double> Friction { get; } = new("friction at the ball", (read, rig) =>
        (rig.HasHitch ? read.QuantityIfKnown(rig.Hitch, HitchFacts.YawFriction) ?? 0 : 0) + (read.QuantityIfKnown(rig.Trailer, TrailerFacts.YawFriction) ?? 0));

    /// <summary>Understeer gradient as driven, rad/(m/s²).</summary>
    public static double Understeering(Reader read, RigStudy rig)
    {
        if (rig.HasTrailer)
        {
            return read.Get(Frictionless, rig) is { } model ? Understeer.Of(model) : double.NaN;
        }

        var solo = read.Get(LoadStates.Solo, rig);
        var wheelbase = read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase);
        var toFront = VehicleStatics.MassCentre(solo, wheelbase);
        return Understeer.Solo(solo.Total / Constants.Gravity, toFront, wheelbase - toFront, read.Get(AxleStiffness.Front, rig).Value, read.Get(AxleStiffness.Rear, rig).Value);
    }

    /// <summary>Damping at a speed (m/s) with the friction of a head at one degree of swing.</summary>
    public static double Damping(Reader read, RigStudy rig, double speed) =>
        read.Get(Frictionless, rig) is { } model ? WithFriction(model, speed, read.Get(Friction, rig)) : double.NaN;

    /// <summary>The same without any friction: what a large swing is left with.</summary>
    public static double DampingOfLargeSwing(Reader read, RigStudy rig, double speed) =>
        read.Get(Frictionless, rig) is { } model ? SingleTrackModel.Modes(model, speed).Damping : double.NaN;

    /// <summary>
    /// Half-width of the damping, to first order: each doubt moves the model by itself, and their squares add up. The tyres of the vehicle are one doubt, the
    /// trailer's another.
    /// </summary>
    public static double DampingSpread(Reader read, RigStudy rig, double speed)
    {
        if (read.Get(Frictionless, rig) is not { } model)
        {
            return double.NaN;
        }

        var (vehicle, trailer) = (read.Get(VehicleInertia, rig).HalfWidth, read.Get(TrailerInertia, rig).HalfWidth);
        var (front, rear, tyres) = (read.Get(AxleStiffness.Front, rig).HalfWidth, read.Get(AxleStiffness.Rear, rig).HalfWidth, read.Get(AxleStiffness.Trailer, rig).HalfWidth);
        var friction = read.Get(Friction, rig);
        var damping = WithFriction(model, speed, friction);
        LateralRig[] moved =
        [
            model with { VehicleInertia = model.VehicleInertia + vehicle },
            model with { TrailerInertia = model.TrailerInertia + trailer },
            model with { FrontStiffness = model.FrontStiffness + front, RearStiffness = model.RearStiffness + rear },
            model with { TrailerStiffness = model.TrailerStiffness + tyres },
        ];
        return Math.Sqrt(moved.Where(other => other != model).Sum(other => Math.Pow(WithFriction(other, speed, friction) - damping, 2)));
    }

    private static double WithFriction(LateralRig model, double speed, double friction) =>
        SingleTrackModel.Modes(FrictionDamper.Apply(model, speed, friction, Amplitude), speed).Damping;
}

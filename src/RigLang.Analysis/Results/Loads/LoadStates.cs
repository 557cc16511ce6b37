using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Loads;

/// <summary>The rig's axle loads (N) in its states: the vehicle as weighed, loaded and solo, coupled with slack bars, and as driven.</summary>
internal static class LoadStates
{
    /// <summary>What the vehicle's axles carry as under aboard.</summary>
    public static Computation<RigStudy, AxleLoads> Weighed { get; } = new("axle loads as weighed", (read, rig) =>
        new AxleLoads(Constants.Gravity * Carried(read, rig, "front"), Constants.Gravity * Carried(read, rig, "rear")));

    /// <summary>The vehicle loaded for this rig, without trailer and without the hitch's head.</summary>
    public static Computation<RigStudy, AxleLoads> SoloBare { get; } = new("solo axle loads, hitch head off", (read, rig) =>
    {
        var weighed = read.Get(Weighed, rig);
        var change = VehicleStatics.FromItems(read.Get(Cargo.OnVehicle, rig).ToArray(), read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase));
        return new AxleLoads(weighed.Front + change.Front, weighed.Rear + change.Rear);
    });

    /// <summary>The same with the hitch's head on: the base of restoration.</summary>
    public static Computation<RigStudy, AxleLoads> Solo { get; } = new("solo axle loads", (read, rig) =>
    {
        var bare = read.Get(SoloBare, rig);
        if (!rig.HasHitch)
        {
            return bare;
        }

        var wheelbase = read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase);
        var head = new PointMass(read.Quantity(rig.Hitch, HitchFacts.Mass), wheelbase + read.Get(Geometry.Overhang, rig));
        var change = VehicleStatics.FromItems([head], wheelbase);
        return new AxleLoads(bare.Front + change.Front, bare.Rear + change.Rear);
    });

    /// <summary>The trailer loaded for this rig, standing level and uncoupled.</summary>
    public static Computation<RigStudy, TrailerLoad> Trailer { get; } = new("loaded trailer", (read, rig) =>
    {
        var axle = read.Get(Geometry.EquivalentAxle, rig);
        var mass = read.Quantity(rig.Trailer, TrailerFacts.Mass);
        var centre = TrailerStatics.MassCentre(mass, read.Quantity(rig.Trailer, TrailerFacts.Tongue), axle);
        return TrailerStatics.FromItems([new PointMass(mass, centre), .. read.Get(Cargo.OnTrailer, rig)], axle);
    });

    /// <summary>Vehicle and ball as the trailer meets them.</summary>
    public static Computation<RigStudy, TowGeometry> Tow { get; } = new("tow vehicle", (read, rig) =>
        new TowGeometry(read.Get(Solo, rig), read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase), read.Get(Geometry.Overhang, rig)));

    /// <summary>Coupled, spring bars slack (or none).</summary>
    public static Computation<RigStudy, CoupledLoads> Slack { get; } = new("coupled, bars slack", (read, rig) =>
        Hitch.Couple(read.Get(Tow, rig), read.Get(Trailer, rig)));

    /// <summary>The couple that the rig asks of its bars, N·m; none without them.</summary>
    public static Computation<RigStudy, double> Couple { get; } = new("couple of the bars", (read, rig) =>
    {
        if (!rig.HasTrailer || !rig.HasHitch || read.Word(rig.Hitch, HitchFacts.Type) != "weight-distributing")
        {
            return 0;
        }

        if (read.QuantityIfKnown(rig.Rig, RigFacts.Couple) is { } couple)
        {
            return couple;
        }

        if (read.QuantityIfKnown(rig.Rig, RigFacts.BarForce) is { } force)
        {
            return Hitch.CoupleFromBarForce(force, read.Quantity(rig.Hitch, HitchFacts.BarLength), (int)read.Quantity(rig.Hitch, HitchFacts.Bars));
        }

        return Hitch.CoupleForRestoration(read.Get(Tow, rig), read.Get(Trailer, rig), read.Quantity(rig.Rig, RigFacts.Restoration));
    });

    /// <summary>Coupled as driven, bars set; solo where the rig has no trailer.</summary>
    public static Computation<RigStudy, CoupledLoads> AsDriven { get; } = new("axle loads as driven", (read, rig) =>
    {
        if (!rig.HasTrailer)
        {
            var solo = read.Get(Solo, rig);
            return new CoupledLoads(solo.Front, solo.Rear, 0, 0, 0);
        }

        return Hitch.Couple(read.Get(Tow, rig), read.Get(Trailer, rig), read.Get(Couple, rig));
    });

    /// <summary>Each trailer axle's load, N, in the order of the axles counted one by one. They always sum to what the axles carry together.</summary>
    public static Computation<RigStudy, IReadOnlyList<double>> TrailerAxles { get; } = new("loads of the trailer's axles", (read, rig) =>
    {
        var axles = read.Get(Geometry.TrailerAxles, rig);
        var together = read.Get(AsDriven, rig).TrailerAxles;
        return read.Get(Geometry.IsIndependent, rig) ? ByTheirSprings(read, rig, axles.ToArray(), together) : [.. axles.Select(_ => together / axles.Count)];
    });

    /// <summary>
    /// Independent axles. Weighed level, each carried its share of the springs; from there the frame turns about the ball with what is loaded, with the couple and
    /// with the ball's height. What that height changes at the ball itself is small and left out there, so it is left out of the sum here.
    /// </summary>
    private static List<double> ByTheirSprings(Reader read, RigStudy rig, SprungAxle[] axles, double together)
    {
        var weighed = Constants.Gravity * (read.Quantity(rig.Trailer, TrailerFacts.Mass) - read.Quantity(rig.Trailer, TrailerFacts.Tongue));
        var added = Constants.Gravity * read.Get(Cargo.OnTrailer, rig).Sum(item => item.Mass * item.Position);
        var rise = read.GetOrStandIn(Level.BallRise, rig) ?? 0;
        var loads = AxleGroup.IndependentFromLevel(weighed, added + read.Get(Couple, rig), axles, rise);
        var sum = loads.Sum();
        return [.. loads.Select(load => load / sum * together)];
    }

    private static double Carried(Reader read, RigStudy rig, string axle)
    {
        var subject = rig.VehicleAxles.FirstOrDefault(candidate => candidate.Axle.Key == axle);
        if (subject is not null && !read.IsWritten(rig.Vehicle, VehicleFacts.Mass))
        {
            return read.Quantity(subject.Axle, AxleFacts.Vehicle.Carries!);
        }

        if (subject is not null && read.QuantityIfKnown(subject.Axle, AxleFacts.Vehicle.Carries!) is { } carried)
        {
            return carried;
        }

        var mass = read.Quantity(rig.Vehicle, VehicleFacts.Mass);
        var share = read.Quantity(rig.Vehicle, VehicleFacts.FrontShare);
        return mass * (axle == "front" ? share : 1 - share);
    }
}

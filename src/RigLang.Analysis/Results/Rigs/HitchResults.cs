using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Rigs;

/// <summary>What the hitch does: its couple, what it gives back to the front axle, and what it does to the lines where the receiver is fastened.</summary>
public static class HitchResults
{
    private const string Balance = "moments about the trailer's axle and the vehicle's axles";
    private const string Beam = "the receiver as a beam on two lines; static, a dynamic factor comes on top";

    public static ResultSet<RigStudy> Set { get; } = new(ResultScope.Rig);

    public static ResultDeclaration<RigStudy> BarCouple { get; } = Set.Add(
        "bar-couple", QuantityKinds.Torque, "Couple of the spring bars", "the moment that the set bars put on the vehicle, and its opposite on the trailer",
        "couple; or bars × bar-force × bar-length; or restoration × tongue-load × g × hitch-overhang × coupling-to-axle ÷ (coupling-to-axle + hitch-overhang)", Balance,
        (read, rig) => Distributing(read, rig, () => read.Get(LoadStates.Couple, rig)));

    public static ResultDeclaration<RigStudy> RestoredShare { get; } = Set.Add(
        "restored-share", QuantityKinds.Ratio, "Front axle restored", "share of what the slack trailer takes from the front axle that the bars bring back; counted from solo with the hitch head on",
        "(front-axle-load − front-axle-slack) ÷ (front-axle-solo − front-axle-slack)", "SAE J2807's front axle load restoration; our base is solo with the head on",
        (read, rig) => Distributing(read, rig, () =>
            Hitch.Restoration(read.Get(LoadStates.Solo, rig).Front, read.Get(LoadStates.Slack, rig).Front, read.Get(LoadStates.AsDriven, rig).Front)));

    public static ResultDeclaration<RigStudy> RestoredShareHeadOff { get; } = Set.Add(
        "restored-share-head-off", QuantityKinds.Ratio, "Front axle restored, head off", "the same, counted from solo without the hitch head: what a weighing with the head off shows",
        "(front-axle-load − front-axle-slack) ÷ (front axle solo, head off − front-axle-slack)", "SAE J2807's front axle load restoration; base is solo with the head off",
        (read, rig) => Distributing(read, rig, () =>
            Hitch.Restoration(read.Get(LoadStates.SoloBare, rig).Front, read.Get(LoadStates.Slack, rig).Front, read.Get(LoadStates.AsDriven, rig).Front)));

    public static ResultDeclaration<RigStudy> BarUse { get; } = Set.Add(
        "bar-use", QuantityKinds.Ratio, "Of the bars' rating", "tongue load as a share of the tongue mass that the bars are made for; the hitch's tongue-rating stands in where no bar-rating is said",
        "tongue-load ÷ bar-rating", "definition",
        (read, rig) => Distributing(read, rig, () =>
        {
            var rating = read.QuantityIfKnown(rig.Hitch, HitchFacts.BarRating);
            if (rating is null)
            {
                read.StandIn(rig.Hitch, HitchFacts.BarRating);
            }

            return read.Get(LoadResults.TongueLoad, rig) / (rating ?? read.Quantity(rig.Hitch, HitchFacts.TongueRating));
        }));

    public static ResultDeclaration<RigStudy> BarLift { get; } = Set.Add(
        "bar-lift", QuantityKinds.Force, "Lift at each bar", "the force with which one bar is pulled up at its end",
        "bar-couple ÷ (bars × bar-length)", Balance,
        (read, rig) => Distributing(read, rig, () =>
            Hitch.BarForce(read.Get(LoadStates.Couple, rig), read.Quantity(rig.Hitch, HitchFacts.BarLength), (int)read.Quantity(rig.Hitch, HitchFacts.Bars))));

    public static ResultDeclaration<RigStudy> BallForce { get; } = Set.Add(
        "ball-force", QuantityKinds.Force, "Force on the ball itself", "more than the net load: the ball holds the bars down besides",
        "ball-load × g + bars × bar-lift", Balance,
        (read, rig) => Distributing(read, rig, () =>
            Hitch.ForceOnBall(read.Get(LoadStates.AsDriven, rig).Ball, read.Get(BarLift, rig), (int)read.Quantity(rig.Hitch, HitchFacts.Bars))));

    public static ResultDeclaration<RigStudy> TrailerAxleGain { get; } = Set.Add(
        "trailer-axle-gain", QuantityKinds.Mass, "Put on the trailer's axles", "what the bars move to the trailer's axles",
        "bar-couple ÷ coupling-to-axle ÷ g", Balance,
        (read, rig) => Distributing(read, rig, () =>
            (read.Get(LoadStates.AsDriven, rig).TrailerAxles - read.Get(LoadStates.Slack, rig).TrailerAxles) / Constants.Gravity));

    public static ResultDeclaration<RigStudy> RearMountForce { get; } = Set.Add(
        "rear-mount-force", QuantityKinds.Force, "Rear mount, as driven", "force of the receiver on its rear line of fastening; down is positive",
        "(ball-load × g × (rear line to ball + lines apart) − bar-couple) ÷ lines apart", Beam,
        (read, rig) => Mounted(read, rig, LoadStates.AsDriven).Rear);

    public static ResultDeclaration<RigStudy> ForwardMountForce { get; } = Set.Add(
        "forward-mount-force", QuantityKinds.Force, "Forward mount, as driven", "force of the receiver on its forward line of fastening; down is positive",
        "(bar-couple − ball-load × g × rear line to ball) ÷ lines apart", Beam,
        (read, rig) => Mounted(read, rig, LoadStates.AsDriven).Forward);

    public static ResultDeclaration<RigStudy> MountBending { get; } = Set.Add(
        "mount-bending", QuantityKinds.Torque, "Bending at the rear mount, as driven", "in the receiver where it passes the rear line; set bars turn its sign",
        "ball-load × g × rear line to ball − bar-couple", Beam,
        (read, rig) => Mounted(read, rig, LoadStates.AsDriven).Bending);

    public static ResultDeclaration<RigStudy> RearMountSlack { get; } = Set.Add(
        "rear-mount-slack", QuantityKinds.Force, "Rear mount, bars slack", "the same with slack bars",
        "as rear-mount-force, without bar-couple", Beam,
        (read, rig) => Mounted(read, rig, LoadStates.Slack).Rear);

    public static ResultDeclaration<RigStudy> ForwardMountSlack { get; } = Set.Add(
        "forward-mount-slack", QuantityKinds.Force, "Forward mount, bars slack", "the same with slack bars",
        "as forward-mount-force, without bar-couple", Beam,
        (read, rig) => Mounted(read, rig, LoadStates.Slack).Forward);

    public static ResultDeclaration<RigStudy> MountBendingSlack { get; } = Set.Add(
        "mount-bending-slack", QuantityKinds.Torque, "Bending at the rear mount, bars slack", "the same with slack bars",
        "as mount-bending, without bar-couple", Beam,
        (read, rig) => Mounted(read, rig, LoadStates.Slack).Bending);

    public static ResultDeclaration<RigStudy> BallLevel { get; } = Set.Add(
        "ball-level", QuantityKinds.Length, "Coupling above level", "how much higher the coupling is carried, as driven, than where the trailer stands level; negative is nose-down",
        "ball height − sinkage of the vehicle there − coupling-height", "axle loads on their springs, small angles",
        (read, rig) => LoadResults.Trailing(read, rig, () => read.Get(Level.BallRise, rig)));

    public static ResultDeclaration<RigStudy> BallDrop { get; } = Set.Add(
        "ball-drop", QuantityKinds.Length, "Ball comes down by", "against the state in which the vehicle was weighed",
        "rear sinkage + pitch × hitch-overhang", "axle loads on their springs, small angles",
        (read, rig) => read.Get(Level.AsDriven, rig).BallDrop);

    public static ResultDeclaration<RigStudy> Pitch { get; } = Set.Add(
        "vehicle-pitch", QuantityKinds.Angle, "Vehicle nose-up by", "against the state in which it was weighed",
        "(rear sinkage − front sinkage) ÷ wheelbase", "axle loads on their springs, small angles",
        (read, rig) => read.Get(Level.AsDriven, rig).Pitch);

    public static ResultDeclaration<RigStudy> DNeeded { get; } = Set.Add(
        "d-needed", QuantityKinds.Force, "D-value needed", "the least D-value that ball, bracket and coupling may show for this vehicle and trailer, by what their papers permit",
        "9.81 × T × R ÷ (T + R) with both gross-ratings", "UN R55 definitions, from memory",
        (read, rig) => LoadResults.Trailing(read, rig, () =>
            CouplingValues.D(read.Quantity(rig.Vehicle, VehicleFacts.GrossRating), read.Quantity(rig.Trailer, TrailerFacts.GrossRating))));

    private static double Distributing(Reader read, RigStudy rig, Func<double> value) => rig.HasTrailer && rig.IsDistributing ? value() : read.NotApplicable();

    private static ReceiverForces Mounted(Reader read, RigStudy rig, Computation<RigStudy, CoupledLoads> state)
    {
        if (!rig.HasTrailer || (!Geometry.UsesReceiver(read, rig) && !read.IsWritten(rig.Vehicle, VehicleFacts.Mount)))
        {
            read.NotApplicable();
            return default;
        }

        var mounts = read.Lines(rig.Vehicle, VehicleFacts.Mount);
        if (mounts.Count != 2)
        {
            read.Need(rig.Vehicle, VehicleFacts.Mount);
            return default;
        }

        var ball = read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase) + read.Get(Geometry.Overhang, rig);
        var ahead = mounts.Select(mount => ball - VehiclePoints.Of(read, rig, mount.PositionOf("place")!)).Order().ToList();
        var loads = read.Get(state, rig);
        return Receiver.Forces(loads.Ball, loads.Couple, ahead[0], ahead[1] - ahead[0]);
    }
}

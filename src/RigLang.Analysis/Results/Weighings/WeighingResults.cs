using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Weighings;

/// <summary>
/// The statics backwards: what three passes say of tongue, couple and restoration. Each is shown by every way there is; how far the ways lie apart is the
/// quality of the weighing.
/// </summary>
public static class WeighingResults
{
    private const string Backwards = "moments about the axles, solved for what the scale can't show by itself";

    public static ResultSet<WeighingStudy> Set { get; } = new(ResultScope.Weighing);

    /// <summary>The passes solved; NaN where a pass lacks an axle.</summary>
    internal static Computation<WeighingStudy, WeighbridgeReading> Reading { get; } = new("passes solved", (read, weighing) =>
    {
        var solo = weighing.Pass("solo");
        var slack = weighing.Pass("slack") ?? weighing.Pass("coupled");
        if (solo is null || slack is null)
        {
            read.Need(weighing.Block, WeighingFacts.Pass);
            return default;
        }

        var tight = weighing.Pass("tight");
        var rig = weighing.Rig;
        return Weighbridge.Read(
            WithHead(read, solo),
            Coupled(read, slack),
            tight is null ? new CoupledPass(double.NaN, double.NaN, double.NaN) : Coupled(read, tight),
            read.Quantity(rig.Vehicle, VehicleFacts.Wheelbase),
            read.Get(Geometry.Overhang, rig),
            read.Get(Geometry.EquivalentAxle, rig));
    });

    public static ResultDeclaration<WeighingStudy> Tongue { get; } = Set.Add(
        "tongue-weighed", QuantityKinds.Mass, "Tongue load, weighed", "from the tongue's own scale, else from what the vehicle gained by coupling with slack bars",
        "scale tongue; or front and rear with slack bars − front and rear solo with the head on", "the scale",
        (read, weighing) => weighing.Pass("trailer")?.Reading("tongue") is { } tongue
            ? read.Get(ReadingResults.Read, tongue)
            : Kilograms(read.Get(Reading, weighing).BallFromSum));

    public static ResultDeclaration<WeighingStudy> TongueByFront { get; } = Set.Add(
        "tongue-by-front-axle", QuantityKinds.Mass, "Tongue load by the front axle", "from what the front axle lost by coupling with slack bars",
        "(front solo − front slack) × wheelbase ÷ hitch-overhang", Backwards,
        (read, weighing) => Kilograms(read.Get(Reading, weighing).BallFromFront));

    public static ResultDeclaration<WeighingStudy> TongueByRear { get; } = Set.Add(
        "tongue-by-rear-axle", QuantityKinds.Mass, "Tongue load by the rear axle", "from what the rear axle gained by coupling with slack bars",
        "(rear slack − rear solo) × wheelbase ÷ (wheelbase + hitch-overhang)", Backwards,
        (read, weighing) => Kilograms(read.Get(Reading, weighing).BallFromRear));

    public static ResultDeclaration<WeighingStudy> CoupleByFront { get; } = Set.Add(
        "couple-by-front-axle", QuantityKinds.Torque, "Couple by the front axle", "from what setting the bars brought back to the front axle",
        "(front tight − front slack) × g × wheelbase × coupling-to-axle ÷ (coupling-to-axle + hitch-overhang)", Backwards,
        (read, weighing) => WithBars(read, weighing, reading => reading.CoupleFromFront));

    public static ResultDeclaration<WeighingStudy> CoupleByRear { get; } = Set.Add(
        "couple-by-rear-axle", QuantityKinds.Torque, "Couple by the rear axle", "from what setting the bars took off the rear axle",
        "(rear slack − rear tight) × g × wheelbase × coupling-to-axle ÷ (coupling-to-axle + wheelbase + hitch-overhang)", Backwards,
        (read, weighing) => WithBars(read, weighing, reading => reading.CoupleFromRear));

    public static ResultDeclaration<WeighingStudy> CoupleByTrailer { get; } = Set.Add(
        "couple-by-trailer-axles", QuantityKinds.Torque, "Couple by the trailer's axles", "from what setting the bars put on the trailer's axles; long levers, few kilograms: the least certain way",
        "(trailer tight − trailer slack) × g × coupling-to-axle", Backwards,
        (read, weighing) => WithBars(read, weighing, reading => reading.CoupleFromTrailer));

    public static ResultDeclaration<WeighingStudy> Restoration { get; } = Set.Add(
        "restoration-weighed", QuantityKinds.Ratio, "Front axle restored, weighed", "share of what the slack trailer took from the front axle that the set bars brought back; counted from solo with the hitch head on",
        "(front tight − front slack) ÷ (front solo − front slack)", "SAE J2807's front axle load restoration; our base is solo with the head on",
        (read, weighing) => WithBars(read, weighing, reading => reading.Restoration));

    /// <summary>How far the two ways to the tongue load may lie apart by the scale's steps alone, kg: each axle read twice, over its lever.</summary>
    public static Computation<WeighingStudy, double> TongueDoubt { get; } = new("doubt of the tongue load", (read, weighing) =>
    {
        var wheelbase = read.Quantity(weighing.Rig.Vehicle, VehicleFacts.Wheelbase);
        var overhang = read.Get(Geometry.Overhang, weighing.Rig);
        double Step(string axle) => new[] { weighing.Pass("solo"), weighing.Pass("slack") ?? weighing.Pass("coupled") }
            .Sum(pass => pass?.Reading(axle) is { } reading ? read.Get(ReadingResults.Doubt, reading) : double.NaN);
        return (Step("front") * wheelbase / overhang) + (Step("rear") * wheelbase / (wheelbase + overhang));
    });

    private static double WithBars(Reader read, WeighingStudy weighing, Func<WeighbridgeReading, double> value) =>
        weighing.Pass("tight") is null ? read.NotApplicable() : value(read.Get(Reading, weighing));

    /// <summary>The solo pass as it would have read with the hitch's head on.</summary>
    private static AxleLoads WithHead(Reader read, PassSubject solo)
    {
        var loads = new AxleLoads(Newtons(read, solo, "front"), Newtons(read, solo, "rear"));
        if (!solo.Rig.HasHitch || read.WordIfKnown(solo.Block, PassFacts.Head) != "off")
        {
            return loads;
        }

        var bare = read.Get(LoadStates.SoloBare, solo.Rig);
        var with = read.Get(LoadStates.Solo, solo.Rig);
        return new AxleLoads(loads.Front + with.Front - bare.Front, loads.Rear + with.Rear - bare.Rear);
    }

    private static CoupledPass Coupled(Reader read, PassSubject pass) => new(Newtons(read, pass, "front"), Newtons(read, pass, "rear"), Newtons(read, pass, "trailer"));

    private static double Newtons(Reader read, PassSubject pass, string axles) =>
        pass.Reading(axles) is { IsOneWheel: false } reading ? Constants.Gravity * read.Get(ReadingResults.Read, reading) : double.NaN;

    private static double Kilograms(double newtons) => newtons / Constants.Gravity;
}

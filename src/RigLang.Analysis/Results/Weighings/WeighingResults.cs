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

    /// <summary>The passes solved; NaN for what needs a pass or an axle that isn't there.</summary>
    internal static Computation<WeighingStudy, WeighbridgeReading> Reading { get; } = new("passes solved", (read, weighing) => Weighbridge.Read(
        weighing.Pass("solo") is { } solo ? new AxleLoads(Newtons(read, solo, WeighedParts.Front), Newtons(read, solo, WeighedParts.Rear)) : new AxleLoads(double.NaN, double.NaN),
        Coupled(read, SlackPass(weighing)),
        Coupled(read, weighing.Pass("tight")),
        read.Quantity(weighing.Rig.Vehicle, VehicleFacts.Wheelbase),
        read.Get(Geometry.Overhang, weighing.Rig),
        read.Get(Geometry.EquivalentAxle, weighing.Rig)));

    public static ResultDeclaration<WeighingStudy> Tongue { get; } = Set.Add(
        "tongue-weighed", QuantityKinds.Mass, "Tongue load, weighed", "from the tongue's own scale, else from what the vehicle gained by coupling with slack bars",
        "scale tongue; or front and rear with slack bars − front and rear solo with the head on", "the scale",
        (read, weighing) => weighing.Pass("trailer")?.Reading("tongue") is { } tongue
            ? read.Get(ReadingResults.Read, tongue)
            : OfTongue(read, weighing, reading => reading.BallFromSum));

    public static ResultDeclaration<WeighingStudy> TongueByFront { get; } = Set.Add(
        "tongue-by-front-axle", QuantityKinds.Mass, "Tongue load by the front axle", "from what the front axle lost by coupling with slack bars",
        "(front solo − front slack) × wheelbase ÷ hitch-overhang", Backwards,
        (read, weighing) => OfTongue(read, weighing, reading => reading.BallFromFront));

    public static ResultDeclaration<WeighingStudy> TongueByRear { get; } = Set.Add(
        "tongue-by-rear-axle", QuantityKinds.Mass, "Tongue load by the rear axle", "from what the rear axle gained by coupling with slack bars",
        "(rear slack − rear solo) × wheelbase ÷ (wheelbase + hitch-overhang)", Backwards,
        (read, weighing) => OfTongue(read, weighing, reading => reading.BallFromRear));

    public static ResultDeclaration<WeighingStudy> TongueGap { get; } = Set.Add(
        "tongue-ways-apart", QuantityKinds.Mass, "Front and rear way apart", "how far the two axles disagree on the tongue load",
        "|tongue-by-front-axle − tongue-by-rear-axle|", Backwards,
        (read, weighing) => Math.Abs(read.Get(TongueByFront, weighing) - read.Get(TongueByRear, weighing)));

    public static ResultDeclaration<WeighingStudy> TongueDoubt { get; } = Set.Add(
        "tongue-ways-explained", QuantityKinds.Mass, "which the scale explains up to", "how far the two axles may disagree on the tongue load by the scale's steps alone: each axle read twice, over its lever",
        "steps of front × wheelbase ÷ hitch-overhang + steps of rear × wheelbase ÷ (wheelbase + hitch-overhang)", Backwards,
        (read, weighing) =>
        {
            var ways = read.Get(TongueByFront, weighing) + read.Get(TongueByRear, weighing);
            var wheelbase = read.Quantity(weighing.Rig.Vehicle, VehicleFacts.Wheelbase);
            var overhang = read.Get(Geometry.Overhang, weighing.Rig);
            return double.IsNaN(ways) ? double.NaN : (Steps(read, WeighedParts.Front, weighing.Pass("solo"), SlackPass(weighing)) * wheelbase / overhang)
                + (Steps(read, WeighedParts.Rear, weighing.Pass("solo"), SlackPass(weighing)) * wheelbase / (wheelbase + overhang));
        });

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

    public static ResultDeclaration<WeighingStudy> CoupleGap { get; } = Set.Add(
        "couple-ways-apart", QuantityKinds.Torque, "Front and rear way apart", "how far the two axles disagree on the couple",
        "|couple-by-front-axle − couple-by-rear-axle|", Backwards,
        (read, weighing) => WithBars(read, weighing, reading => Math.Abs(reading.CoupleFromFront - reading.CoupleFromRear)));

    public static ResultDeclaration<WeighingStudy> CoupleDoubt { get; } = Set.Add(
        "couple-ways-explained", QuantityKinds.Torque, "which the scale explains up to", "how far the two axles may disagree on the couple by the scale's steps alone",
        "g × wheelbase × coupling-to-axle × (steps of front ÷ (coupling-to-axle + hitch-overhang) + steps of rear ÷ (coupling-to-axle + wheelbase + hitch-overhang))", Backwards,
        (read, weighing) =>
        {
            if (weighing.Pass("tight") is not { } tight)
            {
                return read.NotApplicable();
            }

            var wheelbase = read.Quantity(weighing.Rig.Vehicle, VehicleFacts.Wheelbase);
            var overhang = read.Get(Geometry.Overhang, weighing.Rig);
            var axle = read.Get(Geometry.EquivalentAxle, weighing.Rig);
            return Constants.Gravity * wheelbase * axle
                * ((Steps(read, WeighedParts.Front, SlackPass(weighing), tight) / (axle + overhang))
                    + (Steps(read, WeighedParts.Rear, SlackPass(weighing), tight) / (axle + wheelbase + overhang)));
        });

    public static ResultDeclaration<WeighingStudy> Restoration { get; } = Set.Add(
        "restoration-weighed", QuantityKinds.Ratio, "Front axle restored, weighed", "share of what the slack trailer took from the front axle that the set bars brought back; counted from solo with the hitch head on",
        "(front tight − front slack) ÷ (front solo − front slack)", "SAE J2807's front axle load restoration; our base is solo with the head on",
        (read, weighing) =>
        {
            var restoration = WithBars(read, weighing, reading => reading.Restoration);
            Want(read, weighing, weighing.Pass("solo"));
            return restoration;
        });

    /// <summary>The pass with slack bars, or without such bars.</summary>
    internal static PassSubject? SlackPass(WeighingStudy weighing) => weighing.Pass("slack") ?? weighing.Pass("coupled");

    /// <summary>kg; NaN where a pass lacks the reading.</summary>
    private static double Steps(Reader read, WeighedParts parts, params PassSubject?[] passes) =>
        passes.Sum(pass => pass is not null && WeighedGroup.Of(pass, parts) is { } group ? group.Doubt(read) : double.NaN);

    private static double OfTongue(Reader read, WeighingStudy weighing, Func<WeighbridgeReading, double> ball)
    {
        // A weighing of the trailer alone is asked for nothing else.
        if (weighing.Passes.All(pass => pass.State == "trailer"))
        {
            return read.NotApplicable();
        }

        Want(read, weighing, weighing.Pass("solo"), SlackPass(weighing));
        return ball(read.Get(Reading, weighing)) / Constants.Gravity;
    }

    private static double WithBars(Reader read, WeighingStudy weighing, Func<WeighbridgeReading, double> value)
    {
        if (weighing.Pass("tight") is null)
        {
            return read.NotApplicable();
        }

        Want(read, weighing, SlackPass(weighing));
        return value(read.Get(Reading, weighing));
    }

    private static void Want(Reader read, WeighingStudy weighing, params PassSubject?[] passes)
    {
        if (passes.Contains(null))
        {
            read.Need(weighing.Block, WeighingFacts.Pass);
        }
    }

    private static CoupledPass Coupled(Reader read, PassSubject? pass) => pass is null
        ? new CoupledPass(double.NaN, double.NaN, double.NaN)
        : new CoupledPass(Newtons(read, pass, WeighedParts.Front), Newtons(read, pass, WeighedParts.Rear), Newtons(read, pass, WeighedParts.TrailerAxles));

    private static double Newtons(Reader read, PassSubject pass, WeighedParts parts) => WeighedGroup.Of(pass, parts)?.Load(read) ?? double.NaN;
}

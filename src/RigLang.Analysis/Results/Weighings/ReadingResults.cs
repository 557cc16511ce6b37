using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Weighings;

/// <summary>A reading of the scale against what the model says of the same axles in the same state.</summary>
public static class ReadingResults
{
    public static ResultSet<ReadingSubject> Set { get; } = new(ResultScope.Reading);

    public static ResultDeclaration<ReadingSubject> Read { get; } = Set.Add(
        "scale-reading", QuantityKinds.Mass, "On the scale", "what was read, left and right together",
        "scale", "the scale",
        (read, reading) => read.Lines(reading.Pass.Block, PassFacts.Scale).Where(line => reading.Lines.Any(own => own.Key == line.Key)).Sum(line => line.MeasureOf("mass")!.Value));

    public static ResultDeclaration<ReadingSubject> Model { get; } = Set.Add(
        "model-load", QuantityKinds.Mass, "By the model", "what the rig's facts and loads say of the same axles in the same state",
        "the axle loads of the state: solo, bars slack, bars set, trailer alone", "as the rig's loads",
        (read, reading) => reading.IsOneWheel ? read.NotApplicable() : reading.Axles.Split(' ').Sum(axle => Of(read, reading.Pass, axle)) / Constants.Gravity);

    public static ResultDeclaration<ReadingSubject> Gap { get; } = Set.Add(
        "scale-gap", QuantityKinds.Mass, "Scale above model", "how much more the scale says than the model",
        "scale-reading − model-load", "definition",
        (read, reading) => read.Get(Read, reading) - read.Get(Model, reading));

    public static ResultDeclaration<ReadingSubject> OffAll { get; } = Set.Add(
        "off-all-readings", QuantityKinds.Mass, "Above all readings together", "how much more this reading says than all readings of the weighing together make of it",
        "scale-reading − the loads that fit all readings best", "weighted least squares over the passes",
        (read, reading) => read.Get(WeighingFit.Of, reading.Pass.Weighing)?.Residual(group => group.Readings is [var only] && only == reading) is { } residual
            ? residual / Constants.Gravity
            : read.NotApplicable());

    /// <summary>How far a reading may be off by the scale alone, kg: one step for each platform read.</summary>
    public static Computation<ReadingSubject, double> Doubt { get; } = new("doubt of the reading", (read, reading) =>
        read.QuantityIfKnown(reading.Pass.Weighing.Block, WeighingFacts.ScaleStep) is { } step
            ? step * reading.Lines.Length
            : StepFromDigits(read, reading));

    private static double StepFromDigits(Reader read, ReadingSubject reading)
    {
        read.StandIn(reading.Pass.Weighing.Block, WeighingFacts.ScaleStep);
        return reading.Lines.Sum(line => line.MeasureOf("mass") is { } mass ? mass.Unit.HalfWidthToSi(Math.Pow(10, -mass.Decimals), mass.Value) : 0);
    }

    /// <summary>N on one axle in the pass's state; NaN for a word that is no axle of the rig, which a check of its own reports.</summary>
    private static double Of(Reader read, PassSubject pass, string axle) =>
        Of(read, pass.Rig, pass.State, pass.State == "solo" && read.WordIfKnown(pass.Block, PassFacts.Head) == "off", axle);

    /// <param name="read">Notes what is read.</param>
    /// <param name="rig">Loaded as it stood on the scale.</param>
    /// <param name="state">Of a pass.</param>
    /// <param name="isBare">The hitch's head is off, where the vehicle is solo.</param>
    /// <param name="axle">front, rear, trailer, tongue, or the name of a trailer axle.</param>
    internal static double Of(Reader read, RigStudy rig, string state, bool isBare, string axle)
    {
        switch (state)
        {
            case "solo":
                return OfVehicle(read.Get(isBare ? LoadStates.SoloBare : LoadStates.Solo, rig), axle);
            case "trailer":
                var trailer = read.Get(LoadStates.Trailer, rig);
                return axle switch { "trailer" => trailer.AxleLoad, "tongue" => trailer.TongueMass * Constants.Gravity, _ => double.NaN };
            default:
                var loads = read.Get(state == "tight" ? LoadStates.AsDriven : LoadStates.Slack, rig);
                return axle switch
                {
                    "trailer" => loads.TrailerAxles,
                    "tongue" => loads.Ball,
                    "front" or "rear" => OfVehicle(new AxleLoads(loads.Front, loads.Rear), axle),
                    _ => OfTrailerAxle(read, rig, state, axle),
                };
        }
    }

    private static double OfVehicle(AxleLoads loads, string axle) => axle switch { "front" => loads.Front, "rear" => loads.Rear, _ => double.NaN };

    /// <summary>One of several trailer axles is known as driven only.</summary>
    private static double OfTrailerAxle(Reader read, RigStudy rig, string state, string name) =>
        state != "slack" && rig.TrailerAxles.FirstOrDefault(axle => axle.Axle.Key == name) is { } axle
            ? read.Get(Axles.AxleResults.Load, axle) * Constants.Gravity
            : read.NotApplicable();
}

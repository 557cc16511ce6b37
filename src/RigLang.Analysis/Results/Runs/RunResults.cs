using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Runs;

/// <summary>A logged drive held against the model: what was used, what the model says, and how far the two lie apart.</summary>
public static class RunResults
{
    private const string Definition = "definition";
    private const string Coast = "SAE J1263 and 40 CFR 1066.310 describe such tests; here the closed form is fitted through all points, the start speed free. In neutral, in a straight line, best both ways as two runs";
    private const string RoadLoad = "road load stretch by stretch at the logged speed, in the logged wind and air";

    public static ResultSet<RunStudy> Set { get; } = new(ResultScope.Run);

    public static ResultDeclaration<RunStudy> Distance { get; } = Set.Add(
        "run-distance", QuantityKinds.Distance, "Distance", "along the road",
        "distance; or the sections' sum; or the track's length", Definition,
        (read, run) => IsLogged(run) || run.Block.Find(RunFacts.Journey.Distance) is not null ? DrivenRun.WayOf(run).Distance(read) : read.NotApplicable());

    public static ResultDeclaration<RunStudy> EnergyUsed { get; } = Set.Add(
        "run-energy", QuantityKinds.Energy, "Used, battery", "out of the battery, as logged",
        "used; or (charge-before − charge-after) × usable-energy", "the display or the log",
        (read, run) => Drives.Battery(run.Rig) is null || !IsLogged(run) ? read.NotApplicable() : UsedEnergy(read, run));

    public static ResultDeclaration<RunStudy> ModelEnergy { get; } = Set.Add(
        "run-energy-model", QuantityKinds.Energy, "By the model, battery", "what the rig's facts and loads say of the same drive",
        "work at the wheels ÷ drive-efficiency − what regeneration brings back + auxiliary × time", RoadLoad,
        (read, run) => Drives.Battery(run.Rig) is null || !IsLogged(run) ? read.NotApplicable() : read.Get(DrivenRun.Battery, run));

    public static ResultDeclaration<RunStudy> FuelUsed { get; } = Set.Add(
        "run-fuel", QuantityKinds.Volume, "Used, fuel", "out of the tank, as logged",
        "used", "the pump or the log",
        (read, run) => Drives.Engine(run.Rig) is null || !IsLogged(run) ? read.NotApplicable() : Volume(read, run));

    public static ResultDeclaration<RunStudy> ModelFuel { get; } = Set.Add(
        "run-fuel-model", QuantityKinds.Volume, "By the model, fuel", "what the rig's facts and loads say of the same drive",
        "fuel for the crank power of each stretch × its time", RoadLoad,
        (read, run) => Drives.Engine(run.Rig) is null || !IsLogged(run) ? read.NotApplicable() : read.Get(DrivenRun.Fuel, run));

    public static ResultDeclaration<RunStudy> EnergyPerDistance { get; } = Set.Add(
        "run-energy-per-distance", QuantityKinds.EnergyPerDistance, "Used per distance", "out of the battery, as logged",
        "run-energy ÷ run-distance", Definition,
        (read, run) => IsLogged(run) ? read.Get(EnergyUsed, run) / read.Get(Distance, run) : read.NotApplicable());

    public static ResultDeclaration<RunStudy> FuelPerDistance { get; } = Set.Add(
        "run-fuel-per-distance", QuantityKinds.FuelPerDistance, "Used per distance", "out of the tank, as logged",
        "run-fuel ÷ run-distance", Definition,
        (read, run) => IsLogged(run) ? read.Get(FuelUsed, run) / read.Get(Distance, run) : read.NotApplicable());

    public static ResultDeclaration<RunStudy> Gap { get; } = Set.Add(
        "model-gap", QuantityKinds.Ratio, "Used above the model", "how much more was used than the model says, as a share of the model; negative where less",
        "(run-energy − run-energy-model) ÷ run-energy-model, or the same of fuel", Definition,
        (read, run) =>
        {
            if (!IsLogged(run))
            {
                return read.NotApplicable();
            }

            var (used, model) = Drives.Battery(run.Rig) is not null
                ? (read.Get(EnergyUsed, run), read.Get(ModelEnergy, run))
                : (read.Get(FuelUsed, run), read.Get(ModelFuel, run));
            return (used - model) / model;
        });

    public static ResultDeclaration<RunStudy> WallShare { get; } = Set.Add(
        "post-to-battery", QuantityKinds.Ratio, "Post to battery", "of what the post's meter said, how much the battery gave again",
        "run-energy ÷ used-wall", Definition,
        (read, run) => !read.IsWritten(run.Block, RunFacts.UsedWall) || Drives.Battery(run.Rig) is null
            ? read.NotApplicable()
            : read.Get(EnergyUsed, run) / read.Quantity(run.Block, RunFacts.UsedWall));

    public static ResultDeclaration<RunStudy> CoastDrag { get; } = Set.Add(
        "coast-drag-area", QuantityKinds.Area, "Drag area by coasting", "what the `coast` lines say of the whole rig; shown with its doubt by the points and the wind",
        "2 F2 ÷ air density, with effective mass × dv/dt = −(F0 + F2 × air speed²)", Coast,
        (read, run) => read.Get(Coasting.Reading, run).DragArea,
        (run, area, system) => WithDoubt(area, run.Compute(Coasting.Reading, run).Value.DragAreaVariance, QuantityKinds.Area.UnitFor(system)));

    public static ResultDeclaration<RunStudy> CoastRolling { get; } = Set.Add(
        "coast-rolling", QuantityKinds.Number, "Rolling coefficient by coasting", "on asphalt, the same at all speeds; what another surface adds is taken off",
        "(F0 − mass × g × grade) ÷ (mass × g)", Coast,
        (read, run) => read.Get(Coasting.Reading, run).Rolling,
        (run, rolling, _) => WithDoubt(rolling, run.Compute(Coasting.Reading, run).Value.RollingVariance, Units.One));

    /// <summary>False for a run that is a coast-down alone: nothing was used that anybody noted.</summary>
    internal static bool IsLogged(RunStudy run) =>
        run.Block.Find(RunFacts.Used) is not null || run.Block.Find(RunFacts.ChargeBefore) is not null || run.Block.All(RunFacts.Coast).IsEmpty;

    internal static string WithDoubt(double value, double variance, Unit unit) => QuantityWriter.WriteWithHalfWidth(value, 2 * Math.Sqrt(variance), unit);

    private static double UsedEnergy(Reader read, RunStudy run)
    {
        if (Logged(read, run, QuantityKinds.Energy) is { } used)
        {
            return used;
        }

        if (!read.IsWritten(run.Block, RunFacts.ChargeBefore) || !read.IsWritten(run.Block, RunFacts.ChargeAfter))
        {
            read.Need(run.Block, RunFacts.Used);
            return double.NaN;
        }

        return (read.Quantity(run.Block, RunFacts.ChargeBefore) - read.Quantity(run.Block, RunFacts.ChargeAfter)) * Drives.UsableEnergy(read, run.Rig);
    }

    private static double Volume(Reader read, RunStudy run)
    {
        if (Logged(read, run, QuantityKinds.Volume) is { } used)
        {
            return used;
        }

        read.Need(run.Block, RunFacts.Used);
        return double.NaN;
    }

    /// <summary>What <c>used</c> says, if it says it in what this vehicle runs on.</summary>
    private static double? Logged(Reader read, RunStudy run, QuantityKind kind) =>
        read.LineIfWritten(run.Block, RunFacts.Used)?.MeasureOf(Signature.ValueRole) is { } used && used.Kind == kind ? used.Value : null;
}

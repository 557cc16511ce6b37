using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Editing.Reasons;

/// <summary>In which units the results of a subject are shown.</summary>
public static class SubjectUnits
{
    public static UnitChoice Of(ISubject subject, UnitHabit habit = UnitHabit.AsWritten) => habit switch
    {
        UnitHabit.Metric => UnitChoice.Of(DisplaySystem.Metric),
        UnitHabit.Us => UnitChoice.Of(DisplaySystem.Us),
        _ => UnitChoice.AsWritten(BlocksOf(subject)),
    };

    /// <summary>The blocks whose author the reader of the results is used to.</summary>
    private static IEnumerable<Block> BlocksOf(ISubject subject) => subject switch
    {
        RigStudy rig => [rig.Vehicle, rig.Trailer, rig.Hitch, rig.Rig, .. rig.Loads],
        AxleSubject axle => BlocksOf(axle.Rig),
        TripStudy trip => [trip.Block, .. BlocksOf(trip.Rig)],
        LegSubject leg => BlocksOf(leg.Trip),
        StopSubject stop => BlocksOf(stop.Trip),
        WeighingStudy weighing => [weighing.Block, .. BlocksOf(weighing.Rig)],
        RunStudy run => [run.Block, .. BlocksOf(run.Rig)],
        RunSetStudy set => BlocksOf(set.Rig),
        PassSubject pass => BlocksOf(pass.Weighing),
        ReadingSubject reading => BlocksOf(reading.Pass),
        _ => [],
    };
}

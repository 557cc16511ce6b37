using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Workspaces;
using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Editing.Reasons;

/// <summary>Which units suit a result: those that the author of its facts uses.</summary>
public static class AuthorUnits
{
    /// <summary>The system to show a subject's results in.</summary>
    public static DisplaySystem SystemFor(ISubject subject, UnitHabit habit = UnitHabit.AsWritten) => habit switch
    {
        UnitHabit.Metric => DisplaySystem.Metric,
        UnitHabit.Us => DisplaySystem.Us,
        _ => SystemOf(BlocksOf(subject)),
    };

    /// <summary>The system that most quantities of the blocks are written in; metric where they are even.</summary>
    public static DisplaySystem SystemOf(IEnumerable<Block> blocks)
    {
        int us = 0, metric = 0;
        foreach (var fact in blocks.SelectMany(block => block.WithInner()).SelectMany(block => block.Facts))
        {
            foreach (var value in fact.Values.Values)
            {
                if (value is MeasureValue { Measure: { } measure } && measure.Kind.Metric != measure.Kind.Us)
                {
                    _ = measure.Unit.IsCustomary ? us++ : metric++;
                }
            }
        }

        return us > metric ? DisplaySystem.Us : DisplaySystem.Metric;
    }

    private static IEnumerable<Block> BlocksOf(ISubject subject) => subject switch
    {
        RigStudy rig => [rig.Vehicle, rig.Trailer, rig.Hitch, rig.Rig],
        AxleSubject axle => BlocksOf(axle.Rig),
        WeighingStudy weighing => [weighing.Block],
        PassSubject pass => [pass.Weighing.Block],
        ReadingSubject reading => [reading.Pass.Weighing.Block],
        _ => [],
    };
}

using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Syntax;

namespace RigLang.Editing.Hovering;

/// <summary>Which figure stands in for a fact that isn't known, in each rig that reads it.</summary>
internal static class StandIns
{
    public static string For(Spot spot, FactDeclaration fact)
    {
        if (spot.Linked is not { } declaration || spot.Block is not { } block || fact.Kind is not { } kind)
        {
            return "";
        }

        var words = Subjects.Rigs(spot.View, declaration).Select(rig => (Rig: rig, Read: Find(rig, block, fact))).Where(pair => pair.Read is not null)
            .Select(pair => $"in {pair.Rig.Title} {SubjectUnits.Of(pair.Rig, spot.State.Units).Write(pair.Read!.Value, kind)} stands in ({Shown.Estimated})");
        return Phrase.Capital(string.Join(", ", words));
    }

    private static FactRead? Find(RigStudy rig, Block block, FactDeclaration fact)
    {
        var nodes = Catalogue.Of(ResultScope.Rig).Select(result => result.Compute(rig)).OfType<Node>();
        return Ground.Of(nodes).FirstOrDefault(read => read.Fact == fact && read.IsEstimated && !double.IsNaN(read.Value) && read.Block.Path == block.Path);
    }
}

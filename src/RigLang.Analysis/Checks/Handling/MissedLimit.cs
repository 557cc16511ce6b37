using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Linking;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Handling;

/// <summary>A <c>limit</c> of the rig's practice that a result misses.</summary>
/// <param name="Practice">Whose limit it is.</param>
/// <param name="Node">The result, for the subject that misses it.</param>
public sealed record MissedLimit(Declaration Practice, Bound Bound, Node<double> Node, Miss Miss)
{
    public string Result => Bound.Result.Name;

    /// <summary>As many digits as it takes to see on which side of the bound it is.</summary>
    public string Value => QuantityWriter.WriteAgainst(Node.Value, Bound.Written) + (Node.IsEstimated ? " (estimated)" : "");

    /// <summary>"common practice (common-eu) limits it to 4 % .. 7 %", "practice ours limits it to > 0.10 at 100 km/h".</summary>
    public string Limit => $"{(IsBuiltIn ? $"common practice ({Practice.Name})" : Practice.ToString())} limits it to {Bound.Words}{(Bound.At is null ? "" : " at " + Bound.Line.PlaceOf("at").Text)}";

    /// <summary>The limit's line, where it stands in a file that one can open.</summary>
    public IEnumerable<Related> Related => IsBuiltIn ? [] : [new Related(Bound.Line.Place, "the limit")];

    private bool IsBuiltIn => Practice.Own.File == BuiltInPractices.File;

    /// <summary>The limits that the rig, or one of its axles, misses. A limit on what isn't known misses nothing.</summary>
    public static IEnumerable<MissedLimit> Of(RigStudy rig) => Of(rig, rig.Axles.Prepend<ISubject>(rig));

    /// <summary>The same for other subjects that the rig's practice holds for: a trip and its legs.</summary>
    public static IEnumerable<MissedLimit> Of(RigStudy rig, IEnumerable<ISubject> subjects) =>
        rig.Practice.Declaration is not { } practice
            ? []
            : from bound in rig.Practice.Limits
              from subject in subjects
              let node = bound.Evaluate(subject)
              where node is { IsComputed: true }
              let miss = bound.Judge(node.Value)
              where miss != Miss.None
              select new MissedLimit(practice, bound, node, miss);
}

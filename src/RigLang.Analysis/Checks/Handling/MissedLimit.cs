using RigLang.Analysis.Curing;
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

    /// <summary>Tells it from the practice's other limits, and from the same one missed on the other side or by another axle.</summary>
    public string About => AboutOf(Bound, Node.Subject, Miss);

    /// <summary>What the limit of that name is about has come to: "tongue share 6.2 %".</summary>
    public static string? FigureOf(RigStudy rig, string about)
    {
        var found = from bound in rig.Practice.Limits
                    from subject in rig.Axles.Prepend<ISubject>(rig)
                    where about == AboutOf(bound, subject, Miss.Above) || about == AboutOf(bound, subject, Miss.Below)
                    let node = bound.Evaluate(subject)
                    where node is { IsComputed: true }
                    select $"{Effects.Lower(bound.Result.Title)} {QuantityWriter.WriteAgainst(node.Value, bound.Written)}";
        return found.FirstOrDefault();
    }

    private static string AboutOf(Bound bound, ISubject subject, Miss miss) =>
        $"{bound.Result.Name}{(subject is RigStudy ? "" : " of " + subject.Title)} {(miss == Miss.Above ? "above" : "below")} {bound.Words}{(bound.At is null ? "" : " at " + bound.Line.PlaceOf("at").Text)}";

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

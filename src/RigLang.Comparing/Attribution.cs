using System.Collections.Immutable;
using RigLang.Analysis;
using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Comparing;

/// <summary>
/// Which changed input moved which result, and by how much: each change is made alone in the state before, and the results are computed anew. No shares are guessed;
/// what the changes do only together is told apart.
/// </summary>
internal static class Attribution
{
    /// <summary>Beyond so many changes none is made alone: who rewrites a whole file isn't helped by a hundred shares.</summary>
    public const int MostChanges = 60;

    public static ImmutableArray<ResultChange> Explain(ComparedState before, ImmutableArray<Change> changes, ImmutableArray<ResultChange> moved, CancellationToken cancel)
    {
        var single = changes.Where(change => change is { IsInput: true, Steps.IsEmpty: false }).ToList();
        if (single.Count is 0 or > MostChanges || moved.IsEmpty)
        {
            return moved;
        }

        var shares = moved.Select(_ => ImmutableArray.CreateBuilder<Share>()).ToArray();
        foreach (var change in single)
        {
            cancel.ThrowIfCancellationRequested();
            var alone = before.Analysis.With(change.Steps.Aggregate(before.Workspace, (workspace, step) => step.Apply(workspace)));
            var parts = new Dictionary<DeclarationPair, Dictionary<string, ISubject>>();
            for (var index = 0; index < moved.Length; index++)
            {
                if (moved[index] is { Before.IsComputed: true } result && ShareOf(result, alone, parts) is { } difference)
                {
                    shares[index].Add(new Share(change, difference));
                }
            }
        }

        return [.. moved.Select((result, index) => result with { Because = [.. shares[index].OrderByDescending(share => double.IsNaN(share.Difference) ? double.PositiveInfinity : Math.Abs(share.Difference))] })];
    }

    /// <summary>Null where the change alone leaves the result as it was.</summary>
    private static double? ShareOf(ResultChange result, WorkspaceAnalysis alone, Dictionary<DeclarationPair, Dictionary<string, ISubject>> parts)
    {
        if (!parts.TryGetValue(result.Pair, out var subjects))
        {
            var own = result.Pair.Before!;
            var declaration = alone.Workspace.Link(own.Own.File)?.FindOwn(own.Kind, own.Name);
            subjects = declaration is null ? [] : ComputedParts.Of(alone, declaration).ToDictionary(part => part.Key, part => part.Subject);
            parts[result.Pair] = subjects;
        }

        var node = subjects.TryGetValue(result.Part, out var subject) ? result.Result.Compute(subject) : null;
        return node is not { IsComputed: true } ? double.NaN
            : Limits.Same(node.Value, result.Before!.Value) ? null
            : node.Value - result.Before.Value;
    }
}

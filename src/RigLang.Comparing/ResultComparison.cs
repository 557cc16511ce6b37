using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Quantities;

namespace RigLang.Comparing;

/// <summary>Every result and limit of both states against each other.</summary>
internal static class ResultComparison
{
    /// <summary>Results that moved or came and went with a part of a declaration that is in both states, and how many stayed.</summary>
    public static (ImmutableArray<ResultChange> Moved, int Unmoved) Results(ComparedState before, ComparedState after, IEnumerable<DeclarationPair> pairs)
    {
        var moved = ImmutableArray.CreateBuilder<ResultChange>();
        var unmoved = 0;
        foreach (var pair in pairs.Where(pair => pair.IsBoth))
        {
            var old = ComputedParts.Of(before.Analysis, pair.Before!).ToDictionary(part => part.Key, part => part.Subject);
            var now = ComputedParts.Of(after.Analysis, pair.After!).ToList();
            foreach (var (key, subject) in now)
            {
                var was = old.GetValueOrDefault(key);
                old.Remove(key);
                foreach (var result in Catalogue.Results)
                {
                    Compare(new ResultChange(pair, key, result, Asked(result, was), Asked(result, subject)));
                }
            }

            foreach (var (key, subject) in old)
            {
                foreach (var result in Catalogue.Results)
                {
                    Compare(new ResultChange(pair, key, result, Asked(result, subject), null));
                }
            }
        }

        return (moved.ToImmutable(), unmoved);

        void Compare(ResultChange change)
        {
            if (change is { Before: null, After: null })
            {
                return;
            }

            if (IsMoved(change))
            {
                moved.Add(change);
            }
            else
            {
                unmoved++;
            }
        }
    }

    public static ImmutableArray<LimitChange> Limits(ComparedState before, ComparedState after, IEnumerable<DeclarationPair> pairs)
    {
        var changes = ImmutableArray.CreateBuilder<LimitChange>();
        foreach (var pair in pairs.Where(pair => pair is { IsBoth: true, Kind: DeclarationKind.Rig }))
        {
            var old = Keyed(RatingTable.Of(before.Analysis.Rig(pair.Before!)));
            foreach (var (key, line) in Keyed(RatingTable.Of(after.Analysis.Rig(pair.After!))))
            {
                changes.Add(new LimitChange(pair, old.Remove(key, out var was) ? was : null, line));
            }

            changes.AddRange(old.Values.Select(line => new LimitChange(pair, line, null)));
        }

        return [.. changes.Where(change => change.IsMoved)];
    }

    private static OrderedDictionary<string, RatingLine> Keyed(ImmutableArray<RatingLine> lines)
    {
        var keyed = new OrderedDictionary<string, RatingLine>();
        foreach (var line in lines)
        {
            keyed.TryAdd(line.Rating.Title, line);
        }

        return keyed;
    }

    /// <summary>Null where the result isn't one of the subject, or the question doesn't arise.</summary>
    private static Node<double>? Asked(IResult result, ISubject? subject) => subject is not null && result.Compute(subject) is { Applies: true } node ? node : null;

    private static bool IsMoved(ResultChange change)
    {
        var (was, now) = (change.Before is { IsComputed: true }, change.After is { IsComputed: true });
        return was != now || (was && !Quantities.Limits.Same(change.Before!.Value, change.After!.Value));
    }
}

using System.Collections.Immutable;

namespace RigLang.Editing.Reasons;

/// <summary>One step of the answer to "why this number?".</summary>
/// <param name="Title">"Front axle load", "wheelbase of vehicle van".</param>
/// <param name="Name">The result's or the fact's own name: "front-axle-load", "vehicle.wheelbase"; of a step between them its plain words.</param>
/// <param name="Value">A result with its unit, a fact as its author wrote it; empty for what is no single value.</param>
/// <param name="Sort">What kind of step it is.</param>
/// <param name="Place">The line that says it; null where no line does.</param>
/// <param name="Note">The formula of a result, how an estimate is made, who assumes a figure; empty where there is nothing to say.</param>
/// <param name="Because">What it was made from, in the order in which it was read.</param>
public sealed record Reason(
    string Title, string Name, string Value, ReasonSort Sort, FilePlace? Place, string Note, ImmutableArray<Reason> Because)
{
    /// <summary>The value as a number, SI; NaN where it is none.</summary>
    public double Number { get; init; } = double.NaN;

    /// <summary>Where the model of a result comes from; empty for anything else.</summary>
    public string Source { get; init; } = "";

    /// <summary>This and everything below it, each once.</summary>
    public IEnumerable<Reason> All()
    {
        var seen = new HashSet<Reason>(ReferenceEqualityComparer.Instance as IEqualityComparer<Reason>);
        var open = new Stack<Reason>([this]);
        while (open.TryPop(out var next))
        {
            if (!seen.Add(next))
            {
                continue;
            }

            yield return next;
            foreach (var because in next.Because.Reverse())
            {
                open.Push(because);
            }
        }
    }
}

/// <summary>What kind of step a reason is.</summary>
public enum ReasonSort
{
    /// <summary>A declared result.</summary>
    Result,

    /// <summary>A step between, which has no name of its own in the language.</summary>
    Step,

    /// <summary>A line of a file.</summary>
    Written,

    /// <summary>Found for a line that asks with <c>?</c> and a goal.</summary>
    Solved,

    /// <summary>What no line means by the language's own rule.</summary>
    Default,

    /// <summary>The rig's practice assumes it.</summary>
    Assumed,

    /// <summary>The documented estimate stands in; <see cref="Reason.Name"/> is the fact that would replace it.</summary>
    Estimated,

    /// <summary>Needed, and nobody has said it.</summary>
    Missing,
}

using System.Collections.Immutable;
using RigLang.Model.Binding;

namespace RigLang.Comparing;

/// <summary>What became of an input.</summary>
public enum ChangeKind
{
    Added,
    Removed,
    Changed,

    /// <summary>The same value in other words or units.</summary>
    Rewritten,

    /// <summary>Another name for the same thing.</summary>
    Renamed,
}

/// <summary>One input that differs between two states.</summary>
/// <param name="Of">The declaration it belongs to: "vehicle van". A track or a <c>use</c> line belongs to a file, which is named then.</param>
/// <param name="What">What it is, within the declaration: "axle rear, carries". Empty where it is the declaration itself.</param>
/// <param name="Before">As written before; null where there was nothing.</param>
/// <param name="After">As written now; null where nothing is left.</param>
public sealed record Change(ChangeKind Kind, string Of, string What, string? Before, string? After)
{
    /// <summary>Where it stood.</summary>
    public Place? PlaceBefore { get; init; }

    /// <summary>Where it stands now.</summary>
    public Place? PlaceAfter { get; init; }

    /// <summary>Whether another value is read than before. A note, a title, a name and a value in other units change no number.</summary>
    public bool IsInput => Kind is not (ChangeKind.Rewritten or ChangeKind.Renamed);

    /// <summary>"vehicle van, axle rear, carries".</summary>
    public string Title => What.Length == 0 ? Of : $"{Of}, {What}";

    /// <summary>What makes this change alone in the state before; empty where it can't be made alone.</summary>
    internal ImmutableArray<Step> Steps { get; init; } = [];
}

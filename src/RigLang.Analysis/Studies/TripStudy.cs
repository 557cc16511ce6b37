using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Model.Tracks;

namespace RigLang.Analysis.Studies;

/// <summary>A trip with its rig and tracks.</summary>
public sealed class TripStudy : Study, ISubject
{
    private readonly Dictionary<Computation, int> walked = [];

    /// <param name="rig">The study of the rig of the parts.</param>
    public TripStudy(TripParts parts, RigStudy rig)
        : this(parts, rig, null, null)
    {
    }

    private TripStudy(TripParts parts, RigStudy rig, TripStudy? original, Variation? variation)
        : base(original, variation)
    {
        Parts = parts;
        Rig = rig;
        Legs = [.. MakeLegs()];
    }

    public TripParts Parts { get; }

    public string Title => $"trip {Parts.Trip.Name}";

    Study ISubject.Study => this;

    public Block Block => Parts.Trip.Block;

    public RigStudy Rig { get; }

    /// <summary>In the order driven.</summary>
    public ImmutableArray<LegSubject> Legs { get; }

    public override IReadOnlyDictionary<FactDeclaration, Assumption> Assumptions => Rig.Assumptions;

    public override TripStudy With(Variation variation) => new(Parts, Rig.With(variation), this, variation);

    public override IEnumerable<Study> Inner => [Rig];

    /// <summary>What is done at the places, in the order of their legs.</summary>
    public IEnumerable<StopSubject> Stops => Legs.Select(leg => leg.Stop).OfType<StopSubject>();

    /// <summary>Where it begins, as a person calls it.</summary>
    public string StartName => Block.Find(TripFacts.Start) is { } line ? line.WordOf("title") ?? line.WordOf("place") ?? "the start" : "the start";

    /// <summary>
    /// Carries a computation out for all legs before this one, from the first on. A leg's state rests on that of the leg before; without this the last leg
    /// of a very long trip would call down through all the others.
    /// </summary>
    internal void Walk<T>(Computation<LegSubject, T> computation, LegSubject leg)
    {
        for (var next = walked.GetValueOrDefault(computation); next < leg.Index; next++)
        {
            walked[computation] = next + 1;
            Compute(computation, Legs[next]);
        }
    }

    private protected override IEnumerable<ISubject> ListSubjects() => [this, .. Legs, .. Stops];

    /// <summary>A stop belongs to the leg whose name it repeats; where it stands is for a check.</summary>
    private IEnumerable<LegSubject> MakeLegs()
    {
        var stops = Block.AllBlocks(StopFacts.Block).ToDictionary(stop => stop.Key, StringComparer.Ordinal);
        LegSubject? before = null;
        foreach (var leg in Block.AllBlocks(LegFacts.Block))
        {
            before = new LegSubject(this, leg, before, stops.GetValueOrDefault(leg.Key));
            yield return before;
        }
    }
}

/// <summary>A leg of a trip.</summary>
public sealed class LegSubject : ISubject
{
    internal LegSubject(TripStudy trip, Block leg, LegSubject? before, Block? stop)
    {
        ClockBefore = before is null ? (trip.Block.Find(TripFacts.Depart)?.Value as MomentValue)?.Moment.Offset : before.ClockAfter;
        ClockAfter = ClockBefore is not null && stop?.Find(StopFacts.LocalTime)?.Value is OffsetValue { Offset: var offset } ? offset : ClockBefore;
        Trip = trip;
        Leg = leg;
        Before = before;
        Index = before is null ? 0 : before.Index + 1;
        Stop = stop is null ? null : new StopSubject(this, stop);
    }

    public TripStudy Trip { get; }

    public Block Leg { get; }

    /// <summary>Counted from zero.</summary>
    public int Index { get; }

    /// <summary>The leg driven before this one.</summary>
    public LegSubject? Before { get; }

    /// <summary>What is done where it ends.</summary>
    public StopSubject? Stop { get; }

    public Study Study => Trip;

    public string Title => $"leg {Leg.Key}";

    /// <summary>Offset of the clocks while it is driven; null where they are one unnamed local time.</summary>
    internal TimeSpan? ClockBefore { get; }

    /// <summary>The same from the stop behind it on.</summary>
    internal TimeSpan? ClockAfter { get; }

    /// <summary>The place reached, as a person calls it.</summary>
    public string PlaceName => Leg.Opener?.WordOf("title") ?? Leg.Key;

    /// <summary>The track that the leg names; null where it names none, or it can't be read.</summary>
    public Track? Track => Gpx?.Reading.Track;

    /// <summary>The track, measured.</summary>
    public TrackProfile? Profile => Track is { } track ? TrackProfile.Of(track) : null;

    /// <summary>What its <c>gpx</c> line names; null where it has none.</summary>
    public TrackFile? Gpx => Trip.Parts.Tracks.GetValueOrDefault(Leg.Key);
}

/// <summary>A stop of a trip.</summary>
public sealed class StopSubject(LegSubject leg, Block stop) : ISubject
{
    public LegSubject Leg { get; } = leg;

    public Block Block { get; } = stop;

    public TripStudy Trip => Leg.Trip;

    public Study Study => Trip;

    public string Title => $"stop {Block.Key}";
}

/// <summary>What the trip names, looked up.</summary>
/// <param name="Tracks">By leg; only legs that name one.</param>
public sealed record TripParts(Declaration Trip, RigParts? Rig, ImmutableDictionary<string, TrackFile> Tracks)
{
    public static TripParts Of(Workspace workspace, Declaration trip)
    {
        var rig = trip.Block.Find(TripFacts.Rig) is { } line ? RigParts.Named(workspace, line, DeclarationKind.Rig) : null;
        var tracks = ImmutableDictionary.CreateBuilder<string, TrackFile>(StringComparer.Ordinal);
        foreach (var leg in trip.Block.AllBlocks(LegFacts.Block))
        {
            if (TrackFile.Of(workspace, leg, LegFacts.Journey.Gpx) is { } track)
            {
                tracks[leg.Key] = track;
            }
        }

        return new TripParts(trip, rig is null ? null : RigParts.Of(workspace, rig), tracks.ToImmutable());
    }

    public bool SameAs(TripParts other) =>
        ReferenceEquals(Trip, other.Trip) && Rig is { } mine && other.Rig is { } theirs && mine.SameAs(theirs)
        && Tracks.Count == other.Tracks.Count && Tracks.All(pair => other.Tracks.TryGetValue(pair.Key, out var track) && track == pair.Value);
}

using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Model.Tracks;

namespace RigLang.Analysis.Studies;

/// <summary>A trip with its rig and tracks.</summary>
public sealed class TripStudy : Study, ISubject
{
    public TripStudy(TripParts parts)
    {
        Parts = parts;
        Rig = new RigStudy(parts.Rig!);
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

    private IEnumerable<LegSubject> MakeLegs()
    {
        LegSubject? before = null;
        var blocks = Block.Blocks;
        for (var index = 0; index < blocks.Length; index++)
        {
            if (blocks[index].Declaration != LegFacts.Block)
            {
                continue;
            }

            var stop = index + 1 < blocks.Length && blocks[index + 1].Declaration == StopFacts.Block ? blocks[index + 1] : null;
            before = new LegSubject(this, blocks[index], before, stop);
            yield return before;
        }
    }
}

/// <summary>A leg of a trip.</summary>
public sealed class LegSubject : ISubject
{
    internal LegSubject(TripStudy trip, Block leg, LegSubject? before, Block? stop)
    {
        Trip = trip;
        Leg = leg;
        Before = before;
        Stop = stop is null ? null : new StopSubject(this, stop);
    }

    public TripStudy Trip { get; }

    public Block Leg { get; }

    /// <summary>The leg driven before this one.</summary>
    public LegSubject? Before { get; }

    /// <summary>What is done where it ends.</summary>
    public StopSubject? Stop { get; }

    public Study Study => Trip;

    public string Title => $"leg {Leg.Key}";

    /// <summary>The place reached, as a person calls it.</summary>
    public string PlaceName => Leg.Opener?.WordOf("title") ?? Leg.Key;

    /// <summary>The track that the leg names; null where it names none, or it can't be read.</summary>
    public Track? Track => Trip.Parts.Tracks.GetValueOrDefault(Leg.Key)?.Track;
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
public sealed record TripParts(Declaration Trip, RigParts? Rig, ImmutableDictionary<string, TrackReading> Tracks)
{
    public static TripParts Of(Workspace workspace, Declaration trip)
    {
        var rig = trip.Block.Find(TripFacts.Rig) is { } line ? RigParts.Named(workspace, line, DeclarationKind.Rig) : null;
        var tracks = ImmutableDictionary.CreateBuilder<string, TrackReading>(StringComparer.Ordinal);
        foreach (var leg in trip.Block.AllBlocks(LegFacts.Block))
        {
            if (leg.Find(LegFacts.Journey.Gpx) is { } gpx && gpx.WordOf(Signature.ValueRole) is { } path)
            {
                tracks[leg.Key] = ReadTrack(workspace, gpx.Place.File, path);
            }
        }

        return new TripParts(trip, rig is null ? null : RigParts.Of(workspace, rig), tracks.ToImmutable());
    }

    public bool SameAs(TripParts other) =>
        ReferenceEquals(Trip, other.Trip) && Rig is { } mine && other.Rig is { } theirs && mine.SameAs(theirs)
        && Tracks.Count == other.Tracks.Count && Tracks.All(pair => other.Tracks.TryGetValue(pair.Key, out var track) && ReferenceEquals(track, pair.Value));

    /// <summary>A path counts from the folder of the file where its line stands, and must stay in the workspace.</summary>
    internal static TrackReading ReadTrack(Workspace workspace, FileId from, string path) =>
        FilePaths.Resolve(from, path) is { } file && workspace.IsInside(file, from)
            ? workspace.Track(file)
            : Outside;

    private static readonly TrackReading Outside = TrackReading.None("it leads out of the folder that is open, and what lies outside isn't read");
}

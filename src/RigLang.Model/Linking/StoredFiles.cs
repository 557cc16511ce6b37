using System.Collections.Concurrent;
using RigLang.Model.Files;
using RigLang.Model.Tracks;

namespace RigLang.Model.Linking;

/// <summary>
/// What was read from the file source, kept until told that it changed. Files are read when first asked for; safe to use from several threads.
/// </summary>
public sealed class StoredFiles
{
    private readonly IFileSource source;
    private readonly ConcurrentDictionary<FileId, (RigFile? File, string? Problem)> rigs;
    private readonly ConcurrentDictionary<FileId, TrackReading> tracks;

    public StoredFiles(IFileSource source)
        : this(source, [], [])
    {
    }

    private StoredFiles(
        IFileSource source,
        IEnumerable<KeyValuePair<FileId, (RigFile? File, string? Problem)>> rigs,
        IEnumerable<KeyValuePair<FileId, TrackReading>> tracks)
    {
        this.source = source;
        this.rigs = new(rigs);
        this.tracks = new(tracks);
    }

    /// <summary>The file, or why it can't be read.</summary>
    public (RigFile? File, string? Problem) Rig(FileId id) => rigs.GetOrAdd(id, ReadRig);

    /// <summary>The track in a GPX file, or why there is none.</summary>
    public TrackReading Track(FileId id) => tracks.GetOrAdd(id, file => source.Read(file) is { Text: { } text } ? GpxReader.Read(text) : TrackReading.None(source.Read(file).Problem!));

    /// <summary>Every file that was asked for, those that weren't there included.</summary>
    public IEnumerable<FileId> Known => rigs.Keys.Concat(tracks.Keys);

    public IReadOnlyList<FileId> RigFilesUnder(string folder) => source.RigFilesUnder(folder);

    /// <summary>The same, with these files to be read again.</summary>
    public StoredFiles Without(IEnumerable<FileId> changed)
    {
        var gone = changed.ToHashSet();
        return new StoredFiles(source, rigs.Where(pair => !gone.Contains(pair.Key)), tracks.Where(pair => !gone.Contains(pair.Key)));
    }

    /// <summary>The same with another text for a track; null for none.</summary>
    public StoredFiles WithTrack(FileId file, string? gpx)
    {
        var changed = Without([file]);
        changed.tracks[file] = gpx is null ? TrackReading.None("no such file") : GpxReader.Read(gpx);
        return changed;
    }

    private (RigFile? File, string? Problem) ReadRig(FileId id)
    {
        var read = source.Read(id);
        return read.Text is { } text ? (RigFile.Parse(id, text), null) : (null, read.Problem);
    }
}

using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Model.Tracks;

namespace RigLang.Analysis.Studies;

/// <summary>What a <c>gpx</c> line names.</summary>
/// <param name="Line">The line.</param>
/// <param name="IsOutside">The path leads out of the workspace, so the file isn't read.</param>
public sealed record TrackFile(Fact Line, TrackReading Reading, bool IsOutside)
{
    /// <summary>The file is looked for from the folder of the file where the line stands. Null when the block has no such line, or one that isn't whole.</summary>
    public static TrackFile? Of(Workspace workspace, Block block, FactDeclaration gpx)
    {
        if (block.Find(gpx) is not { } line || line.WordOf(Signature.ValueRole) is not { } path)
        {
            return null;
        }

        return FilePaths.Resolve(line.Place.File, path) is { } file && workspace.IsInside(file, line.Place.File)
            ? new TrackFile(line, workspace.Track(file), IsOutside: false)
            : new TrackFile(line, TrackReading.None("it leads out of the folder that is open, and what lies outside isn't read"), IsOutside: true);
    }
}

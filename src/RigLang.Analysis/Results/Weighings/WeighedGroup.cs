using System.Collections.Immutable;
using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Results.Loads;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Mechanics;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Weighings;

/// <summary>What one pass says of front axle, rear axle, trailer axles or tongue, or of several together: one reading, or one for each of the trailer's axles.</summary>
internal sealed record WeighedGroup(PassSubject Pass, WeighedParts Parts, ImmutableArray<ReadingSubject> Readings)
{
    /// <summary>The groups that a pass's readings make; a wheel by itself makes none, nor do some of the trailer's axles without the others.</summary>
    public static IEnumerable<WeighedGroup> Of(PassSubject pass)
    {
        var ofTrailerAxles = new List<ReadingSubject>();
        foreach (var reading in pass.Readings.Where(reading => !reading.IsOneWheel))
        {
            if (PartsOf(reading.Axles.Split(' ')) is { } parts)
            {
                yield return new WeighedGroup(pass, parts, [reading]);
            }
            else
            {
                ofTrailerAxles.Add(reading);
            }
        }

        var names = ofTrailerAxles.SelectMany(reading => reading.Axles.Split(' ')).Order(StringComparer.Ordinal).ToList();
        if (names.Count > 0 && names.SequenceEqual(pass.Rig.TrailerAxles.Select(axle => axle.Axle.Key).Order(StringComparer.Ordinal)))
        {
            yield return new WeighedGroup(pass, WeighedParts.TrailerAxles, [.. ofTrailerAxles]);
        }
    }

    /// <summary>The pass's reading of exactly these parts, or null.</summary>
    public static WeighedGroup? Of(PassSubject pass, WeighedParts parts) => Of(pass).FirstOrDefault(group => group.Parts == parts);

    /// <summary>N, brought to the state of the weighing's first pass with the hitch's head on: who sat in, and a head that was off, are reckoned in by the model.</summary>
    public double Load(Reader read)
    {
        var scale = Constants.Gravity * Readings.Sum(reading => read.Get(ReadingResults.Read, reading));
        var common = Pass.Weighing.Rig;
        return IsBare(read, Pass) || !Pass.Rig.Parts.Absent.SetEquals(common.Parts.Absent)
            ? scale + ModelOf(read, common, isBare: false) - ModelOf(read, Pass.Rig, IsBare(read, Pass))
            : scale;
    }

    /// <summary>How far the scale's steps alone may put it off, kg.</summary>
    public double Doubt(Reader read) => Readings.Sum(reading => read.Get(ReadingResults.Doubt, reading));

    public WeighingState State => Pass.State switch { "tight" => WeighingState.Set, "slack" or "coupled" => WeighingState.Slack, _ => WeighingState.Apart };

    private double ModelOf(Reader read, RigStudy rig, bool isBare) =>
        Words.Where(word => Parts.HasFlag(word.Parts)).Sum(word => ReadingResults.Of(read, rig, Pass.State, isBare, word.Word));

    private static bool IsBare(Reader read, PassSubject pass) =>
        pass is { State: "solo", Rig.HasHitch: true } && read.WordIfKnown(pass.Block, PassFacts.Head) == "off";

    private static readonly ImmutableArray<(string Word, WeighedParts Parts)> Words =
        [("front", WeighedParts.Front), ("rear", WeighedParts.Rear), ("trailer", WeighedParts.TrailerAxles), ("tongue", WeighedParts.Tongue)];

    private static WeighedParts? PartsOf(IEnumerable<string> words)
    {
        var all = WeighedParts.None;
        foreach (var word in words)
        {
            if (Words.FirstOrDefault(one => one.Word == word) is not { Word: not null } known)
            {
                return null;
            }

            all |= known.Parts;
        }

        return all;
    }
}

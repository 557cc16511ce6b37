using RigLang.Analysis.Checks;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Analysis.Curing;

/// <summary>What a change comes to, in numbers: what the finding is about first, then what else it moves.</summary>
internal static class Effects
{
    /// <summary>A rating is told of beside the finding when it is used further than this afterwards (our choice).</summary>
    private const double NearlyUsed = 0.9;
    private const double LeastTongueChange = 0.0005;
    private const double LeastDelay = 30;

    public static string Words(Check check, Finding finding, Study before, Study after)
    {
        var figure = check.Figure(after, finding);
        return string.Join(", ", new[] { figure }.OfType<string>().Concat((before, after) switch
        {
            (RigStudy rig, RigStudy changed) => OfRig(rig, changed, finding.About, figure ?? ""),
            (TripStudy trip, TripStudy changed) => OfTrip(trip, changed),
            _ => [],
        }));
    }

    private static IEnumerable<string> OfRig(RigStudy before, RigStudy after, string about, string figure)
    {
        var was = RatingTable.Of(before).ToLookup(line => line.Rating.Title);
        var other = RatingTable.Of(after).FirstOrDefault(line =>
            line is { IsKnown: true, Use: > NearlyUsed } && line.Rating.Title != about && was[line.Rating.Title].Any(old => line.Load.Value > old.Load.Value + 0.5));
        if (other is not null)
        {
            yield return Rating(other);
        }

        if (RatioResults.TongueRatio.Compute(before) is { IsComputed: true } tongue && RatioResults.TongueRatio.Compute(after) is { IsComputed: true } now
            && Math.Abs(tongue.Value - now.Value) > LeastTongueChange && !figure.Contains("tongue share", StringComparison.Ordinal))
        {
            yield return $"tongue {QuantityWriter.Write(now.Value, Units.Percent, 1)}";
        }
    }

    /// <summary>"axle rear 1712 kg of 1720 kg".</summary>
    public static string Rating(RatingLine line) => $"{Lower(line.Rating.Title).Replace(", ", " ", StringComparison.Ordinal)} {QuantityWriter.WriteAgainst(line.Load.Value, line.Limit!)} of {QuantityWriter.WriteLike(line.Limit!.Value, line.Limit)}";

    public static string Lower(string title) => title.Length > 1 && char.IsLower(title[1]) ? char.ToLowerInvariant(title[0]) + title[1..] : title;

    private static IEnumerable<string> OfTrip(TripStudy before, TripStudy after)
    {
        if (TripResults.TotalTime.Compute(before) is { IsComputed: true } was && TripResults.TotalTime.Compute(after) is { IsComputed: true } now && Math.Abs(now.Value - was.Value) > LeastDelay)
        {
            var minutes = Math.Round(Math.Abs(now.Value - was.Value) / 60) * 60;
            yield return $"{QuantityWriter.WriteDuration(minutes)} {(now.Value > was.Value ? "longer" : "shorter")}";
        }
    }
}

using RigLang.Analysis.Results.Stability;
using RigLang.Analysis.Studies;
using RigLang.Editing.Reasons;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Cli.Showing;

/// <summary>How a rig moves sideways by itself: the damping against speed, and each motion at the rig's speed.</summary>
internal static class MotionSections
{
    private const double MilesPerHour = 1609.344 / 3600;

    public static IEnumerable<Section> Of(RigStudy rig, UnitChoice units)
    {
        var (first, step) = units.System == DisplaySystem.Us ? (40 * MilesPerHour, 10 * MilesPerHour) : (60 / 3.6, 10 / 3.6);
        var count = units.System == DisplaySystem.Us ? 5 : 8;
        var curve = Motions.Curve(rig, Enumerable.Range(0, count).Select(index => first + (index * step)));
        if (curve.Length > 0)
        {
            yield return new Section(
                "Damping of a swing against speed",
                [.. curve.Select(point => new Row(units.Write(point.Speed, QuantityKinds.Speed), Number(point.Damping.Value), point.Damping.IsEstimated ? Shown.Estimated : ""))]);
        }

        var motions = Motions.Of(rig);
        if (motions.Length > 0 && rig.Rig.Find(RigFacts.Speed)?.MeasureOf(Signature.ValueRole) is { } speed)
        {
            yield return new Section($"Sideways motions by themselves at {speed.Text}", [.. motions.Select(Row)]);
        }
    }

    private static Row Row(Motion motion) => new(
        motion.Frequency > 0 ? $"Swing, one in {Time(1 / motion.Frequency)}" : "No swing",
        motion.Halving > 0 ? $"halves in {Time(motion.Halving)}" : $"doubles in {Time(-motion.Halving)}",
        motion.Frequency > 0 ? $"damping {Number(motion.Damping)}" : "");

    private static string Number(double value) => QuantityWriter.Write(value, QuantityKinds.Number, DisplaySystem.Metric);

    private static string Time(double seconds) => QuantityWriter.Write(seconds, Units.Second, 2);
}

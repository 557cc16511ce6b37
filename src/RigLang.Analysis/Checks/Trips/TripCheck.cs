using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>Looks at a trip with its rig and tracks.</summary>
public abstract class TripCheck : Check
{
    public abstract IEnumerable<Finding> Run(TripStudy trip);

    /// <summary>A finding at a place of the trip; at its name where the line is inherited, so that it shows in the trip's own file.</summary>
    private protected Finding Report(TripStudy trip, Place place, string message) => Report(IsOwn(trip, place) ? place : trip.Parts.Trip.Own.NamePlace, message);

    /// <summary>Whether a fix may change the line: an inherited one belongs to another declaration.</summary>
    private protected static bool IsOwn(TripStudy trip, Place place) => place.Declaration == trip.Parts.Trip.Own.Syntax;

    /// <summary>Where the leg's name stands.</summary>
    private protected static Place PlaceOf(LegSubject leg) => leg.Leg.Opener!.PlaceOf("place");

    /// <summary>The leg that a finding is about, in a study of the trip.</summary>
    private protected static LegSubject? LegOf(Study study, Finding finding) => (study as TripStudy)?.Legs.FirstOrDefault(leg => leg.Leg.Key == finding.About);

    /// <summary>What is left where the leg ends: "18 % left at Bay".</summary>
    private protected static string? LeftAt(Study study, Finding finding) =>
        LegOf(study, finding) is { } leg && leg.Trip.Compute(LegResults.EnergyLeft, leg) is { IsComputed: true } left ? $"{Percent(left.Value)} left at {leg.PlaceName}" : null;

    private protected static string Percent(double share) => QuantityWriter.Write(share, QuantityKinds.Ratio, DisplaySystem.Metric);

    /// <summary>The next whole percent: what to leave with, so that it is enough.</summary>
    private protected static string WholePercent(double share) => QuantityWriter.Write(Math.Ceiling((share * 100) - 1e-9) / 100, Units.Percent, 0);

    private protected static string Duration(double seconds) => QuantityWriter.WriteDuration(seconds);

    /// <summary>A length along the road in the unit of the trip's author.</summary>
    private protected static string Distance(TripStudy trip, double metres) => InUnitOf(trip, metres, QuantityKinds.Distance);

    /// <summary>A speed in the unit of the trip's author.</summary>
    private protected static string Speed(TripStudy trip, double speed) => InUnitOf(trip, speed, QuantityKinds.Speed);

    private static string InUnitOf(TripStudy trip, double value, QuantityKind kind)
    {
        var like = trip.Block.WithInner().SelectMany(block => block.Facts).SelectMany(fact => fact.Values.Values).OfType<MeasureValue>().FirstOrDefault(written => written.Measure.Kind == kind);
        var unit = like?.Measure.Unit ?? kind.Metric;
        return QuantityWriter.Write(value, unit, Math.Abs(unit.FromSi(value)) >= 20 ? 0 : 1);
    }
}

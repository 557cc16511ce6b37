using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Curing;

/// <summary>The speed of a rig or of a leg, downward.</summary>
internal static class SpeedLevers
{
    /// <summary>Slower than this (our choice, 40 km/h) nobody would go for it.</summary>
    private const double Slowest = 40 / 3.6;

    public static IEnumerable<Handle> Slower(Study study, Finding finding) => study switch
    {
        RigStudy rig => SettingLevers.OfLine(rig.Rig, RigFacts.Speed, value => (Math.Min(Slowest, value), value), text => $"Drive at {text}"),
        TripStudy trip when trip.Legs.FirstOrDefault(leg => leg.Leg.Key == finding.About) is { } leg => OnLeg(trip, leg),
        _ => [],
    };

    private static IEnumerable<Handle> OnLeg(TripStudy trip, LegSubject leg)
    {
        var fact = LegFacts.Journey.Speed;
        string Words(string text) => $"Drive at {text} to {leg.PlaceName}";
        if (leg.Leg.Find(fact) is not null)
        {
            return SettingLevers.OfLine(leg.Leg, fact, value => (Math.Min(Slowest, value), value), Words);
        }

        // What counts is the rig's speed: the leg gets a line of its own, so that the others stay as they are.
        return trip.Rig.Rig.Find(RigFacts.Speed)?.MeasureOf(Signature.ValueRole) is { } like && leg.Leg.Opener is { } opener
            ? [new Handle(FactRef.Of(leg.Leg, fact), like.Value, Math.Min(Slowest, like.Value), like.Value, like.Unit, like.Decimals, value => new Change(Words(like.With(value).Text), NewLine.Under(opener), NewLine.Text(leg.Leg, $"{fact.Keyword} {like.With(value).Text}")))]
            : [];
    }
}

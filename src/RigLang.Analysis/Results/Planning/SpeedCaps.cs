using System.Collections.Immutable;
using RigLang.Analysis.Checks.Law;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Planning;

/// <summary>How fast a plan may drive a leg.</summary>
internal static class SpeedCaps
{
    /// <summary>All that caps a leg, the lowest first. A steady speed that isn't known caps nothing; the plan says so.</summary>
    public static Computation<LegSubject, ImmutableArray<SpeedCap>> OfLeg { get; } = new("speed caps of the leg", (read, leg) =>
    {
        var rig = leg.Trip.Rig;
        var caps = ImmutableArray.CreateBuilder<SpeedCap>();
        caps.Add(Comfort(read, leg));
        if (read.QuantityIfKnown(leg.Leg, LegFacts.SpeedLimit) is { } limit)
        {
            caps.Add(new SpeedCap(limit, CapReason.Limit, "the leg's speed-limit"));
        }

        if (rig.HasTrailer && read.WordIfKnown(rig.Rig, RigFacts.Rules) == "de")
        {
            caps.Add(new SpeedCap(GermanSpeed.Of(rig).Limit, CapReason.Law, "German law with a trailer"));
        }

        caps.AddRange(read.Get(RatedSpeeds.Of, rig));
        if (read.GetIfKnown(SteadySpeed.Of, rig) is { } steady)
        {
            caps.Add(new SpeedCap(steady, CapReason.Steady, "the steady speed"));
        }

        return [.. caps.OrderBy(cap => cap.Speed)];
    });

    private static SpeedCap Comfort(Reader read, LegSubject leg)
    {
        if (read.QuantityIfKnown(leg.Trip.Block, TripFacts.ComfortSpeed) is { } comfort)
        {
            return new SpeedCap(comfort, CapReason.Comfort, "comfort-speed");
        }

        if (read.QuantityIfKnown(leg.Leg, LegFacts.Journey.Speed) is { } own)
        {
            return new SpeedCap(own, CapReason.Comfort, "the leg's speed");
        }

        return read.QuantityIfKnown(leg.Trip.Rig.Rig, RigFacts.Speed) is { } usual
            ? new SpeedCap(usual, CapReason.Comfort, "the rig's speed")
            : new SpeedCap(read.Get(Driving.Fastest, leg), CapReason.Comfort, "the sections' speeds");
    }
}

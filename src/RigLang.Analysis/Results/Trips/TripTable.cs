using System.Collections.Immutable;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>A leg with the stop behind it, as a table or a hover shows them.</summary>
/// <param name="Arrives">Null where the trip says no departure.</param>
/// <param name="Leaves">When the stop ends; null without a stop or a departure.</param>
public sealed record TripRow(LegSubject Leg, StopSubject? Stop, Node<double> Distance, Node<double> Time, Node<double> Left, Node<double> RangeLeft, Moment? Arrives, Moment? Leaves)
{
    public Node<double>? StopTime { get; init; }

    public Node<double>? ChargeTime { get; init; }

    public Node<double>? LeavingWith { get; init; }

    /// <summary>What the stop costs; null where nothing is bought for a price. <see cref="IResult.Write"/> of <see cref="StopResults.Cost"/> shows it.</summary>
    public Node<double>? Cost { get; init; }

    /// <summary>The speed wished isn't held everywhere: the drive hasn't the power.</summary>
    public bool IsPowerShort { get; init; }

    /// <summary>Energy or fuel per distance, whichever the vehicle uses; null when neither.</summary>
    public Node<double>? PerDistance { get; init; }

    /// <summary>The result that <see cref="PerDistance"/> is.</summary>
    public IResult? PerDistanceResult { get; init; }
}

/// <summary>A trip leg by leg.</summary>
public static class TripTable
{
    public static ImmutableArray<TripRow> Of(TripStudy trip) => [.. trip.Legs.Select(Row)];

    private static TripRow Row(LegSubject leg)
    {
        var trip = leg.Trip;
        var stopTime = leg.Stop is { } stop ? trip.Compute(StopResults.StopTime, stop) : null;
        var arrival = trip.Compute(LegResults.Arrival, leg);
        var perDistance = Road.Drives.Battery(trip.Rig) is not null ? LegResults.EnergyPerDistance : Road.Drives.Engine(trip.Rig) is not null ? LegResults.FuelPerDistance : null;
        return new TripRow(
            leg, leg.Stop, trip.Compute(LegResults.Distance, leg), trip.Compute(LegResults.Time, leg), trip.Compute(LegResults.EnergyLeft, leg), trip.Compute(LegResults.RangeLeft, leg),
            arrival.IsComputed ? Clock.At(leg, arrival.Value, onArrival: true) : null,
            arrival.IsComputed && stopTime is { IsComputed: true } ? Clock.At(leg, arrival.Value + stopTime.Value, onArrival: false) : null)
        {
            StopTime = stopTime,
            ChargeTime = leg.Stop is { } charging ? trip.Compute(StopResults.ChargeTime, charging) : null,
            LeavingWith = leg.Stop is { } leaving ? trip.Compute(StopResults.LeavingWith, leaving) : null,
            Cost = leg.Stop is { } paid && trip.Compute(StopResults.Cost, paid) is { Applies: true } cost ? cost : null,
            IsPowerShort = trip.Compute(Driving.Driven, leg) is { Missing: null, Value.IsPowerShort: true },
            PerDistance = perDistance?.Compute(leg),
            PerDistanceResult = perDistance,
        };
    }
}

using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Results.Trips;

/// <summary>An amount of money in one currency; currencies are never converted.</summary>
public readonly record struct Cost(double Amount, string Currency);

/// <summary>What charging and refuelling cost by the written prices.</summary>
public static class Costs
{
    /// <summary>Of a stop, by the energy that the post delivers or the fuel bought. Doesn't apply without a price, or where nothing of that sort is bought.</summary>
    public static Computation<StopSubject, Cost> OfStop { get; } = new("cost of the stop", (read, stop) =>
    {
        if (PriceOf(stop, read.LineIfWritten(stop.Block, StopFacts.Price)) is not { } price)
        {
            read.NotApplicable();
            return default;
        }

        var amount = Drives.Battery(stop.Trip.Rig) is not null ? read.Get(Charging.Bought, stop) : read.Get(Refuelling.Volume, stop);
        return new Cost(amount * price.Value, price.Unit.Currency ?? "");
    });

    /// <summary>Of a trip, by currency; stops without a price are left out.</summary>
    public static ImmutableArray<Cost> OfTrip(TripStudy trip) =>
    [
        .. trip.Stops.Select(stop => trip.Compute(OfStop, stop))
            .Where(node => node.Applies && node.Missing is null && double.IsFinite(node.Value.Amount))
            .GroupBy(node => node.Value.Currency).Select(group => new Cost(group.Sum(node => node.Value.Amount), group.Key)),
    ];

    /// <summary>The one currency of all prices that something is bought for; null where there is none, or several.</summary>
    public static string? CurrencyOf(TripStudy trip)
    {
        string? only = null;
        foreach (var stop in trip.Stops)
        {
            if (CurrencyOf(stop) is not { } currency)
            {
                continue;
            }

            if (only is not null && only != currency)
            {
                return null;
            }

            only = currency;
        }

        return only;
    }

    /// <summary>Of a stop's price; null where nothing is bought for it.</summary>
    public static string? CurrencyOf(StopSubject stop) => stop.Trip.Compute(OfStop, stop).Applies ? PriceOf(stop, stop.Block.Find(StopFacts.Price))?.Unit.Currency : null;

    /// <summary>Of a stop or a trip; null of anything else.</summary>
    internal static string? CurrencyIn(ISubject subject) => subject switch
    {
        StopSubject stop => CurrencyOf(stop),
        TripStudy trip => CurrencyOf(trip),
        _ => null,
    };

    /// <summary>The price, if it is one for what the vehicle takes.</summary>
    private static Measure? PriceOf(StopSubject stop, Model.Binding.Fact? line)
    {
        var price = line?.MeasureOf(Signature.ValueRole);
        var wanted = Drives.Battery(stop.Trip.Rig) is not null ? QuantityKinds.MoneyPerEnergy : QuantityKinds.MoneyPerVolume;
        return price?.Kind == wanted ? price : null;
    }
}

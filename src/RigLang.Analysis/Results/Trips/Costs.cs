using System.Collections.Immutable;
using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Results.Trips;

/// <summary>An amount of money in one currency; currencies are never converted.</summary>
public readonly record struct Cost(double Amount, string Currency);

/// <summary>What charging and refuelling cost by the written prices.</summary>
public static class Costs
{
    /// <summary>Of a stop, by the energy that the post delivers or the fuel bought; not computed without a price.</summary>
    public static Computation<StopSubject, Cost> OfStop { get; } = new("cost of the stop", (read, stop) =>
    {
        if (read.LineIfWritten(stop.Block, StopFacts.Price)?.MeasureOf(Signature.ValueRole) is not { } price)
        {
            read.NotApplicable();
            return default;
        }

        var rig = stop.Trip.Rig;
        var amount = Drives.Battery(rig) is not null
            ? read.Get(Charging.Energy, stop) / Charging.Efficiency(read, stop)
            : (read.Get(Charge.AfterStop, stop) - read.Get(Charge.AtEnd, stop.Leg)) * read.Get(Drives.TankVolume, rig);
        return new Cost(amount * price.Value, price.Unit.Currency ?? "");
    });

    /// <summary>Of a trip, by currency; stops without a price are left out.</summary>
    public static ImmutableArray<Cost> OfTrip(TripStudy trip) =>
    [
        .. trip.Legs.Select(leg => leg.Stop).OfType<StopSubject>().Select(stop => trip.Compute(OfStop, stop))
            .Where(node => node.Applies && node.Missing is null && double.IsFinite(node.Value.Amount))
            .GroupBy(node => node.Value.Currency).Select(group => new Cost(group.Sum(node => node.Value.Amount), group.Key)),
    ];
}

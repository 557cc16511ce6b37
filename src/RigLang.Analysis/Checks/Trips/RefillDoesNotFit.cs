using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A line charges a vehicle that has no battery, or refuels one that has no tank.</summary>
public sealed class RefillDoesNotFit : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL717",
        Slug = "refill-does-not-fit",
        Severity = Severity.Error,
        Summary = "A line charges an engine, or refuels a battery.",
        Why = "The line says nothing for this vehicle; perhaps the trip names another rig than it was written for.",
        Bad = TripExample.Petrol("""
            trip out
                rig solo
                start home
                start-fuel 30 L
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    charger 50 kW dc
                    charge-to 80 %
            """),
        Good = TripExample.Petrol("""
            trip out
                rig solo
                start home
                start-fuel 30 L
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    refuel-to 100 %
            """),
        Fix = "Write `refuel-to` for an engine, `charger` and `charge-to` for a battery.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        var isEngine = Drives.Engine(trip.Rig) is not null;
        if (!isEngine && Drives.Battery(trip.Rig) is null)
        {
            yield break;
        }

        var (start, instead) = isEngine ? (TripFacts.StartCharge, "`start-fuel`") : (TripFacts.StartFuel, "`start-charge`");
        if (trip.Block.Find(start) is { } level)
        {
            yield return Idle(trip, level, isEngine, instead);
        }

        foreach (var stop in trip.Stops)
        {
            var (refill, wanted) = isEngine ? (StopFacts.Charger, "`refuel-to`") : (StopFacts.RefuelTo, "`charger` and `charge-to`");
            if (stop.Block.Find(refill) is { } line)
            {
                yield return Idle(trip, line, isEngine, wanted);
            }

            var unfit = isEngine ? QuantityKinds.MoneyPerEnergy : QuantityKinds.MoneyPerVolume;
            if (stop.Block.Find(StopFacts.Price) is { } price && price.MeasureOf(Signature.ValueRole)?.Kind == unfit)
            {
                yield return Idle(trip, price, isEngine, isEngine ? "a price for a volume, such as `1.79 EUR/L`" : "a price for energy, such as `0.62 AUD/kWh`");
            }
        }
    }

    private Finding Idle(TripStudy trip, Fact line, bool isEngine, string instead) =>
        Report(trip, line.Place, $"The vehicle has {(isEngine ? "an engine" : "a battery drive")}, so `{line.Declaration.Keyword}` says nothing here. Write {instead}.");
}

using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>Prices of a trip have several currencies, so there is no one sum.</summary>
public sealed class CurrenciesMixed : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL719",
        Slug = "currencies-mixed",
        Severity = Severity.Note,
        Summary = "Prices of the trip have several currencies; each is added up by itself.",
        Why = "Rates change by the day, so nothing is converted, and `total-cost` can't be one figure.",
        Bad = TripExample.Petrol("""
            trip out
                rig solo
                start home
                start-fuel 30 L
                leg border
                    distance 190 km
                    climb 0 m
                stop border
                    refuel-to 100 %
                    price 1.79 EUR/L
                leg coast
                    distance 150 km
                    climb 0 m
                stop coast
                    refuel-to 100 %
                    price 6.40 PLN/L
            """),
        Good = TripExample.Petrol("""
            trip out
                rig solo
                start home
                start-fuel 30 L
                leg border
                    distance 190 km
                    climb 0 m
                stop border
                    refuel-to 100 %
                    price 1.79 EUR/L
                leg coast
                    distance 150 km
                    climb 0 m
                stop coast
                    refuel-to 100 %
                    price 1.65 EUR/L
            """),
        Fix = "Nothing, or write all prices in the currency that you pay in at home.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        var priced = trip.Stops.Where(stop => Costs.CurrencyOf(stop) is not null).DistinctBy(Costs.CurrencyOf).ToList();
        if (priced.Count > 1)
        {
            var sums = Costs.OfTrip(trip);
            var words = sums.Length == priced.Count ? ": " + string.Join(" and ", sums.Select(sum => QuantityWriter.WriteMoney(sum.Amount, sum.Currency))) : "";
            yield return Report(trip, priced[1].Block.Find(StopFacts.Price)!.Place, $"Prices are in {string.Join(" and ", priced.Select(Costs.CurrencyOf))}; each is added up by itself{words}.");
        }
    }
}

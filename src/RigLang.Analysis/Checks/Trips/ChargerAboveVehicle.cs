using RigLang.Analysis.Results.Road;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Trips;

/// <summary>A post offers more than the vehicle can take.</summary>
public sealed class ChargerAboveVehicle : TripCheck
{
    // A post that is a little stronger than the car is the ordinary case and needs no word.
    private const double WorthSaying = 0.75;

    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL704",
        Slug = "charger-above-vehicle",
        Severity = Severity.Note,
        Summary = "A post offers far more than the vehicle can take, so charging is slower than the post's figure suggests.",
        Why = "On alternating current the charger aboard sets the pace, on direct current the battery's own curve and the post's current.",
        Bad = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    charger 22 kW ac
                    charge-to 90 %
            """),
        Good = TripExample.Electric("""
            trip out
                rig solo
                start home
                start-charge 95 %
                leg coast
                    distance 190 km
                    climb 0 m
                stop coast
                    charger 11 kW ac
                    charge-to 90 %
            """),
        Fix = "Nothing, if the time shown is right; a post of less power may do and cost less.",
    };

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        foreach (var stop in trip.Stops)
        {
            var time = trip.Compute(StopResults.ChargeTime, stop);
            if (stop.Block.Find(StopFacts.Charger) is not { } post || !time.IsComputed || !(time.Value > 0) || post.MeasureOf("power") is not { } offered || Drives.Battery(trip.Rig) is not { } battery)
            {
                continue;
            }

            var isAc = post.WordOf("kind") == "ac";
            var most = isAc ? battery.Find(ElectricFacts.AcPower)?.MeasureOf("value")?.Value : Highest(trip, stop);
            if (most is not { } taken || !(taken < WorthSaying * offered.Value))
            {
                continue;
            }

            var mean = trip.Compute(StopResults.EnergyCharged, stop).Value / time.Value;
            var limit = isAc ? "the charger aboard takes no more than" : "the battery and the post's current allow no more than";
            yield return Report(
                trip, post.PlaceOf("power"),
                $"The post offers {offered.Text}, but {limit} {Power(taken)}: {Power(mean)} on the mean, {Duration(time.Value)} for this stop{Mark(time)}.");
        }
    }

    /// <summary>Most that goes in between arrival and leaving, W.</summary>
    private static double? Highest(TripStudy trip, StopSubject stop)
    {
        var (from, to) = (Math.Max(0, trip.Compute(Charge.AtEnd, stop.Leg).Value), trip.Compute(Charge.AfterStop, stop).Value);
        return trip.Compute(Charging.Curve, stop).Value is { } curve ? Enumerable.Range(0, 41).Max(step => curve.PowerAt(from + ((to - from) * step / 40))) : null;
    }

    private static string Power(double watts) => QuantityWriter.Write(watts, Units.Kilowatt, watts >= 20_000 ? 0 : 1);
}

using RigLang.Analysis.Checks.Trips;
using RigLang.Analysis.Studies;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>A trailer sets out on tyres that are six years old or older.</summary>
public sealed class TrailerTyreOld : TripCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL507",
        Slug = "trailer-tyre-old",
        Severity = Severity.Warning,
        Summary = "A trailer sets out on tyres that are six years old or older.",
        Why = "Trailer tyres stand more than they roll. They crack inside long before the tread is gone, and the tread of a trailer is never gone.",
        Bad = TripExample.Electric(Trip.Replace("WEEK", "2018-W20", StringComparison.Ordinal)),
        Good = TripExample.Electric(Trip.Replace("WEEK", "2024-W20", StringComparison.Ordinal)),
        Fix = "Renew them; the four figures behind DOT on the sidewall are week and year.",
        Source = "common practice: trailer tyres to six years (value from memory); 9th exemption regulation to the German StVO, section 3, read in the state of 2022-03-26",
    };

    private const string Trip = """
        trailer box
            mass 900 kg
            tongue 60 kg
            rolling 0.011
            drag-area 1.2 m²
            axle only
                tyres 185/65R14 93N
                tyres-made WEEK
            aboard nothing

        rig pair
            vehicle van
            trailer box
            speed 80 km/h

        trip out
            rig pair
            depart 2026-07-04 09:00
            start home
            start-charge 95 %
            leg coast
                distance 60 km
                climb 0 m
        """;

    private const int MostYears = 6;

    public override IEnumerable<Finding> Run(TripStudy trip)
    {
        if (!trip.Rig.HasTrailer || (trip.Block.Find(TripFacts.Depart)?.Value as MomentValue)?.Moment.Date is not { } day)
        {
            yield break;
        }

        foreach (var axle in trip.Rig.TrailerAxles)
        {
            if (axle.Axle.Find(axle.Facts.TyresMade) is { Value: MomentValue { Moment.Date: var made } } line && made.Year + MostYears <= DateOnly.MaxValue.Year && made.AddYears(MostYears) <= day)
            {
                var law = trip.Rig.Rig.Find(RigFacts.Rules)?.WordOf(Signature.ValueRole) == "de" ? " They rule out 100 km/h too, by German law as read 2022-03-26." : "";
                yield return Report(
                    trip, trip.Block.Find(TripFacts.Rig)!.Place,
                    $"On {new Moment(day)} the tyres of trailer axle {axle.Axle.Key} are six years old or older: they were made in {YearWeek.Of(made)}. Renew them before this trip.{law}")
                    with { Related = [new Related(line.Place, "when they were made")] };
            }
        }
    }
}
